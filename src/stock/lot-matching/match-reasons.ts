/** Why a product of the register is, may be or is not one that a notice means. */
export type ProductReasonCode =
  | 'product chosen'
  | 'gtin equal'
  | 'names equal'
  | 'gtin of another pack'
  | 'gtin equal, named otherwise'
  | 'names equal, other gtin'
  | 'product name equal, other maker'
  | 'only product name'
  | 'maker similar'
  | 'product name similar'
  | 'shade similar'
  | 'no shade on record'
  | 'no gtin on record'
  | 'only maker'
  | 'only shade'
  | 'no product named'
  | 'slight likeness'
  | 'other shade'
  | 'other product';

/** The same for a lot of the product; the strongest first. */
export const lotReasonCodes = [
  'all lots named',
  'code equal',
  'code in range',
  'use-by in span',
  'manufactured in span',
  'code equal, other use-by',
  'code in range, other use-by',
  'other spacing',
  'look-alikes',
  'look-alike of range',
  'leading zeros',
  'range shows other length',
  'range perhaps',
  'slip',
  'slip from range',
  'use-by overlaps span',
  'no use-by on record',
  'no manufacture date on record',
  'code unreadable',
  'no code printed',
  'range not understood',
  'open-ended',
  'no lots named',
  'lot not named',
] as const;
export type LotReasonCode = (typeof lotReasonCodes)[number];

export type MatchReasonCode = ProductReasonCode | LotReasonCode | 'corrected code';

/** What the sentence of a reason is made of, so that a screen can say it in another language. Days are ISO `YYYY-MM-DD`. */
export interface MatchFacts {
  /** As the notice writes it. */
  named?: string | null;
  /** As it stands on record. */
  recorded?: string | null;
  /** Ends of the range or span that the notice names; null: open at that end. */
  from?: string | null;
  through?: string | null;
}

export interface MatchReason {
  code: MatchReasonCode;
  message: string;
  facts: MatchFacts;
}

export function matchReason(code: MatchReasonCode, facts: MatchFacts = {}): MatchReason {
  return { code, message: sentences[code](facts), facts };
}

const ends = ({ from, through }: MatchFacts) => `${from ?? 'the beginning'} through ${through ?? 'no end'}`;
const said = (text: string | null | undefined) => (text == null || text === '' ? 'nothing' : `“${text}”`);

const sentences: Record<MatchReasonCode, (facts: MatchFacts) => string> = {
  'product chosen': () => 'A person chose this product as one that the notice means.',
  'gtin equal': ({ recorded }) => `The notice names the GTIN ${recorded}.`,
  'names equal': ({ recorded }) => `The notice names ${said(recorded)}.`,
  'gtin of another pack': ({ named, recorded }) =>
    `The notice names the GTIN ${named}; ${recorded} on record is the same item in another pack.`,
  'gtin equal, named otherwise': ({ named, recorded }) =>
    `The GTIN is the one of the notice, but the notice names ${said(named)} and the record ${said(recorded)}.`,
  'names equal, other gtin': ({ named, recorded }) =>
    `The names are those of the notice, but it gives the GTIN ${named} and the record ${recorded}.`,
  'product name equal, other maker': ({ named, recorded }) =>
    `The product name is the one of the notice, but it names the maker ${said(named)} and the record ${said(recorded)}.`,
  'only product name': () => 'The notice names the product without its maker.',
  'maker similar': ({ named, recorded }) =>
    `The notice names the maker ${said(named)}, the record ${said(recorded)}: nearly the same.`,
  'product name similar': ({ named, recorded }) =>
    `The notice names the product ${said(named)}, the record ${said(recorded)}: nearly the same, or part of it.`,
  'shade similar': ({ named, recorded }) =>
    `The notice names the shade ${said(named)}, the record ${said(recorded)}: nearly the same.`,
  'no shade on record': ({ named }) => `The notice names the shade ${said(named)}; the record has none.`,
  'no gtin on record': ({ named }) =>
    `The notice names the product by the GTIN ${named} only; the record has none to compare.`,
  'only maker': ({ recorded }) => `The notice names only the maker ${said(recorded)}, and no product.`,
  'only shade': ({ recorded }) => `Of the product the notice names only the shade ${said(recorded)}.`,
  'no product named': () => 'The notice names no product.',
  'slight likeness': ({ named, recorded }) =>
    `The notice names ${said(named)}, which hardly fits ${said(recorded)}; but the lot code is equal.`,
  'other shade': ({ named, recorded }) =>
    `The notice names the shade ${said(named)}; this is ${said(recorded)}.`,
  'other product': ({ named, recorded }) => `The notice names ${said(named)}; this is ${said(recorded)}.`,

  'all lots named': () => 'The notice names all lots.',
  'code equal': ({ named }) => `The notice names the code ${named}.`,
  'code in range': (facts) => `The code ${facts.recorded} lies in the range ${ends(facts)}.`,
  'use-by in span': (facts) => `The use-by date ${facts.recorded} lies in the span ${ends(facts)}.`,
  'manufactured in span': (facts) =>
    `The manufacture date ${facts.recorded} lies in the span ${ends(facts)}.`,
  'code equal, other use-by': (facts) =>
    `The notice names the code ${facts.named} with a use-by date of ${ends(facts)}; the record says ${facts.recorded}.`,
  'code in range, other use-by': (facts) =>
    `The code lies in the range ${facts.named}, which the notice names with a use-by date of ${ends(facts)}; the record says ${facts.recorded}.`,
  'other spacing': ({ named, recorded }) =>
    `The notice names ${named}, the record ${recorded}: only spaces, hyphens or a word before the code differ.`,
  'look-alikes': ({ named, recorded }) =>
    `The notice names ${named}, the record ${recorded}: they differ in characters that look alike.`,
  'look-alike of range': (facts) =>
    `The code ${facts.recorded} lies in the range ${ends(facts)} when signs and look-alike characters do not count.`,
  'leading zeros': ({ named, recorded }) =>
    `The notice names ${named}, the record ${recorded}: only leading zeros differ.`,
  'range shows other length': (facts) =>
    `The number of ${facts.recorded} lies in the range ${ends(facts)}, but is not written with as many digits; leading zeros may be lost.`,
  'range perhaps': (facts) =>
    `The code ${facts.recorded} may lie in the range ${ends(facts)}, depending on how it is meant.`,
  slip: ({ named, recorded }) =>
    `The notice names ${named}, the record ${recorded}: one character missing, added, changed or swapped.`,
  'slip from range': (facts) =>
    `The code ${facts.recorded} is one slip away from the range ${ends(facts)}: a character missing, added, changed or swapped.`,
  'use-by overlaps span': (facts) =>
    `The label shows only a month or year, ${facts.recorded} at the latest, of which a part lies in the span ${ends(facts)}.`,
  'no use-by on record': (facts) =>
    `The notice names the use-by dates ${ends(facts)}; the record has no use-by date.`,
  'no manufacture date on record': (facts) =>
    `The notice names what was manufactured ${ends(facts)}; the record has no manufacture date.`,
  'code unreadable': () => 'The code of this lot could not be read.',
  'no code printed': () => 'This lot has no code on record.',
  'range not understood': (facts) =>
    `It is not clear which codes lie between ${facts.from} and ${facts.through}; any lot of the product may.`,
  'open-ended': () => 'The notice says that lots beyond those named may be meant.',
  'no lots named': () => 'The notice names no lots of this product; each may be meant.',
  'lot not named': () => 'The notice does not name this lot.',

  'corrected code': ({ recorded }) =>
    `The code ${recorded} stood on record for this lot before it was corrected; the label may have said so.`,
};
