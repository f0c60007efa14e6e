import { ServiceProblem } from '../service/problem.js';
import type { ClaimDraft } from './claim-fields.js';

/** What the service would say of what cannot be read, so that it stands at its fields. */
export function unreadableClaim(
  fields: readonly (keyof ClaimDraft)[],
  messages: { pieces: string; amount: string },
): ServiceProblem {
  const faults = fields.map((field) => ({
    field,
    message: field === 'pieces' ? messages.pieces : messages.amount,
  }));
  const message = faults[0]?.message ?? messages.amount;
  return new ServiceProblem({ status: 400, code: 'invalid-fields', title: message, detail: message, faults });
}
