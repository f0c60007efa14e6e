/**
 * What Windows-1252 has between 0x80 and 0x9F, which is the encoding of PDF's standard fonts (PDF 32000-1, annex D.2,
 * WinAnsiEncoding [M]); below and above it agrees with Latin-1.
 */
const extra = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';
/** Stands for a character that the fonts do not have. */
export const missingCharacter = '¿';

/**
 * A text as the standard fonts of a PDF can show it. Accents they lack are taken off their letters, spaces of all kinds
 * become plain ones, what cannot be seen is left out, and each character that is left over is shown as `¿`.
 * @returns the text, and how many characters are not shown as they were written
 */
export function standardText(text: string): { text: string; replaced: number } {
  let shown = '';
  let replaced = 0;
  for (const character of text.normalize('NFC')) {
    if (isShown(character)) shown += character;
    else if (/\p{Cc}|\p{Zs}|\p{Zl}|\p{Zp}/u.test(character)) shown += ' ';
    else if (!/\p{Cf}|\p{Mn}/u.test(character)) {
      const bare = [...character.normalize('NFD')].filter((part) => isShown(part)).join('');
      shown += bare === '' ? missingCharacter : bare;
      replaced += 1;
    }
  }
  return { text: shown, replaced };
}

function isShown(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  return (code >= 0x20 && code < 0x7f) || (code >= 0xa0 && code <= 0xff) || extra.includes(character);
}
