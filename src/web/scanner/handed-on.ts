import { gtin14 } from '../../catalogue/gs1/check-digit.js';
import { readBadge } from '../../identity/tablets/badge-text.js';

/**
 * Whether a symbol that was read is handed on. Not
 * - the badge of whoever works: it is a secret, and the camera always looks;
 * - interleaved 2 of 5, unless it is what the trade bears on it, a GTIN of 14 digits: it has no check of its own, and a
 *   part of it reads as a shorter one (GS1 General Specifications, ITF-14 [S]).
 */
export function isHandedOn(symbologyIdentifier: string, text: string): boolean {
  if (readBadge(text) !== undefined) return false;
  return !symbologyIdentifier.startsWith(']I') || (text.length === 14 && gtin14(text) !== undefined);
}
