import { gtin14 } from '../../catalogue/gs1/check-digit.js';

/** Digits as they are printed under a barcode, with a space or hyphen between groups of them. */
const groupsOfDigits = /\d+(?:[ -]\d+)*/g;
const mostDigits = 14;

/**
 * The GTINs in what somebody wrote about barcodes, 14 digits each, in their order and once: numbers of 8, 12, 13 or 14
 * digits whose check digit is right. What is none of these is left out, since a wrong number would find a wrong product.
 */
export function numbersOfTrade(text: string): string[] {
  const found = new Set<string>();
  for (const [printed] of text.matchAll(groupsOfDigits)) {
    const groups = printed.split(/[ -]/);
    for (let first = 0; first < groups.length; ) {
      const { gtin, taken } = longestNumber(groups, first);
      if (gtin !== undefined) found.add(gtin);
      first += taken;
    }
  }
  return [...found];
}

/** As many groups as make up a number, the longest there is. */
function longestNumber(
  groups: readonly string[],
  first: number,
): { gtin: string | undefined; taken: number } {
  let digits = '';
  let longest: { gtin: string | undefined; taken: number } = { gtin: undefined, taken: 1 };
  for (let count = 1; digits.length <= mostDigits && first + count <= groups.length; count += 1) {
    digits += groups[first + count - 1];
    const gtin = gtin14(digits);
    if (gtin !== undefined) longest = { gtin, taken: count };
  }
  return longest;
}
