/**
 * As what the fields of a session are sealed: what was sealed as one does not open as another. All are sealed under the
 * client's own key.
 */
export const sealedAsBodyPlaceDetail = (sessionId: string) => `session.body_place_detail:${sessionId}`;
/** A text for people. */
export const sealedAsComplications = (sessionId: string) => `session.complications:${sessionId}`;
/** JSON. */
export const sealedAsHealedResult = (sessionId: string) => `session.healed_result:${sessionId}`;
/** Why something was used, or why a use was reversed: a text for people. */
export const sealedAsUseReason = (useId: string) => `session_use.reason:${useId}`;
export const sealedAsUseReversalReason = (useId: string) => `session_use_reversal.reason:${useId}`;
