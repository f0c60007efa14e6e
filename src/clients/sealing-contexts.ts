/** As what the fields of a client are sealed: what was sealed as one does not open as another. */
export const sealedAsName = (clientId: string) => `client.name:${clientId}`;
export const sealedAsContact = (clientId: string) => `client.contact:${clientId}`;
export const sealedAsNote = (clientId: string) => `client.note:${clientId}`;
/** Why the record is needed for a claim, and why no longer. */
export const sealedAsClaimReason = (claimId: string) => `legal_claim.reason:${claimId}`;
export const sealedAsClaimEndReason = (claimId: string) => `legal_claim_end.reason:${claimId}`;
