/**
 * Draws one of several lots. The same seed draws the same from the same list, so that anybody can see that it was not
 * chosen: 32-bit FNV-1a of the seed's characters (draft-eastlake-fnv [M]), modulo the number of lots.
 * @param lotIds in any order; they are sorted first
 * @returns undefined when there is none to draw from
 */
export function drawnLot(seed: string, lotIds: readonly string[]): string | undefined {
  const sorted = [...lotIds].sort();
  return sorted.length === 0 ? undefined : sorted[fnv1a(seed) % sorted.length];
}

/** 32-bit FNV-1a of the low bytes of a text. */
export function fnv1a(text: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) {
    hash = Math.imul(hash ^ (text.charCodeAt(index) & 0xff), 0x01000193);
  }
  return hash >>> 0;
}
