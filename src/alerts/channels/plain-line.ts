/** Marks that turn the reading direction of what follows, or that nobody sees: they could make a line say something else. */
const unseen =
  /[\u00AD\u061C\u180E\u200B\u200E\u200F\u202A-\u202E\u2060-\u2069\uFEFF\uFFF9-\uFFFB\u{E0000}-\u{E007F}]/gu;

/**
 * A text as one line for a person: without ends of lines, control characters, halves of characters and unseen marks.
 * @param longest in characters; what is longer ends with an ellipsis
 */
export function plainLine(text: string, longest: number): string {
  const line = text
    .replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ')
    .replace(/\p{Cs}/gu, '\uFFFD')
    .replace(unseen, '')
    .replace(/ {2,}/g, ' ')
    .trim();
  // Characters are counted as people count them, near enough: no half of one is left at the end.
  const characters = [...line];
  return characters.length <= longest
    ? line
    : `${characters
        .slice(0, longest - 1)
        .join('')
        .trimEnd()}…`;
}
