import { formatLabelCode, type LabelContent } from '../catalogue/own-label.js';
import { localDay } from '../identity/local-day.js';

/** What a label is made from. */
export interface LabelFacts {
  form: 'bottle' | 'box';
  labelCode: string;
  productName: string;
  /** The shade of a pigment or the notation of a cartridge. */
  detail: string | null;
  code: string | null;
  codeState: 'printed' | 'none printed' | 'unreadable';
  /** Last day of use, YYYY-MM-DD. */
  useBy: string | null;
  openedAt: string | null;
  /** The number of the single unit; null when the product has none. */
  gtin14: string | null;
}

export interface LabelLine {
  text: string;
  weight: 'bold' | 'regular';
}

/** What people read on a label, top to bottom; only characters the printed font has. */
export function labelLines(facts: LabelFacts, timeZone: string): LabelLine[] {
  const regular = (text: string): LabelLine => ({ text: inPrintedFont(text), weight: 'regular' });
  const lot =
    facts.code !== null
      ? `Lot ${facts.code}`
      : facts.codeState === 'unreadable'
        ? 'Lot unreadable'
        : 'No lot printed';
  const opened = facts.openedAt === null ? '____________' : localDay(facts.openedAt, timeZone);
  return [
    { text: inPrintedFont(facts.productName), weight: 'bold' },
    ...(facts.detail === null ? [] : [regular(facts.detail)]),
    regular(lot),
    regular(facts.useBy === null ? 'No use-by printed' : `Use by ${facts.useBy}`),
    { text: formatLabelCode(facts.labelCode), weight: 'bold' },
    ...(facts.form === 'bottle' ? [regular(`Opened on ${opened}`)] : []),
  ];
}

/** What the symbol of a label says, as far as it can. */
export function labelContent({ labelCode, gtin14, useBy, code }: LabelFacts): LabelContent {
  return {
    code: labelCode,
    ...(gtin14 === null ? {} : { gtin14 }),
    ...(useBy === null ? {} : { useBy }),
    ...(code === null ? {} : { lotCode: code }),
  };
}

/** Characters of Windows code page 1252 beyond Latin-1, which the standard fonts of PDF have [M]. */
const beyondLatin1 = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';

/** Text in the characters of the standard PDF fonts: an accent they lack is dropped, another character becomes "?". */
export function inPrintedFont(text: string): string {
  return [...text.normalize('NFC')]
    .map((character) => {
      if (isPrinted(character)) return character;
      const base = [...character.normalize('NFD')].find((part) => !/\p{M}/u.test(part)) ?? '';
      return isPrinted(base) ? base : '?';
    })
    .join('');
}

function isPrinted(character: string): boolean {
  return /^[\x20-\x7e\xa0-\xff]$/.test(character) || (character !== '' && beyondLatin1.includes(character));
}
