import { minorUnits } from '../plans/figures/minor-units.js';
import type { ClaimDraft } from './claim-fields.js';

/** A claim as it is handed in. */
export interface ClaimContent {
  pieces: number;
  amountMinor: number | null;
  note: string | null;
}

/**
 * What was written, as it is handed in: an empty amount or note is none.
 * @returns the content; or the fields that are no number, or no amount of the currency
 */
export function contentOfClaim(
  { pieces, amount, note }: ClaimDraft,
  currency: string,
): { content: ClaimContent } | { unreadable: (keyof ClaimDraft)[] } {
  const count = /^\d{1,7}$/.test(pieces.trim()) ? Number(pieces) : undefined;
  const amountMinor = minorUnits(amount, currency);
  const unreadable: (keyof ClaimDraft)[] = [];
  if (count === undefined) unreadable.push('pieces');
  if (amountMinor === undefined) unreadable.push('amount');
  if (count === undefined || amountMinor === undefined) return { unreadable };
  return { content: { pieces: count, amountMinor, note: note.trim() === '' ? null : note.trim() } };
}
