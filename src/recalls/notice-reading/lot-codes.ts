/**
 * Which words may be lot codes, and where one code ends and the next begins.
 *
 * Inner spaces are the difficulty: `AB 12-34` is one code, `110737A 110738A` are two whose comma is missing, and nobody
 * can tell with `513602 00-001`. What is unsure is read joined, as it is written, and each part that could be a code
 * alone is offered beside it, so that nothing is lost either way.
 */
import { hasDigit } from './label-words.js';
import type { Token } from './tokens.js';

/** A code is at most this long, spaces included; a longer word is remarked and not taken for one. */
export const longestCode = 60;
const mostPieces = 4;

export interface CodeEntry {
  /** As written. More than one where spaces part codes of one shape. */
  codes: { text: string; from: number; to: number }[];
  /** What the words could be, each alone, where the code was read joined but may be several. */
  alternatives: string[];
  /** The token after the entry. */
  next: number;
}

/** How a code is built: digits as 9, letters as A, other signs as they are. */
export function shapeOf(code: string): string {
  return code.replace(/\d/g, '9').replace(/\p{L}/gu, 'A');
}

/** Words in capitals that are no codes, though they stand where codes stand. */
const everyday = new Set(
  (
    'and or the is are was were been being of no to for from with without all any nos not this that these those has have had will ' +
    'may can must does only also see please affected following listed below above recalled involved impacted concerned ' +
    'number numbers code codes exp expiry date dates lot lots batch batches use manufactured product products item items name shade colour color description ' +
    'brand size quantity units unit bottles boxes und oder sind mit bis ' +
    'tba unknown various multiple n/a none stop urgent recall notice important warning safety class printed marked labelled labeled ' +
    'label bottle box carton package packaging which where when who how what whole entire because due since through thru until'
  ).split(' '),
);

/** Small words of other languages and names of places, which in capitals may also be the letters of a code. */
const doubtful = new Set(
  'nr be on in at by an as do if it its der die das ist von et ou le la les des du de un une y o el los las n na usa eu uk us fda den zu del y e al au'.split(
    ' ',
  ),
);

/** Words that may stand between a lot word and the first code. */
const fillers = new Set(
  (
    'is are was were the this these those following affected concerned recalled involved impacted listed below above include includes included including ' +
    'number numbers no nos nr code codes with bearing marked printed from between of for and only as follows being under in all to subject related ' +
    'folgende folgenden betroffen betroffene betroffenen sind ist die der mit von zwischen und nummer nummern den ' +
    'suivants suivant concernes concerne sont est les le de du entre et numero numeros siguientes siguiente afectados afectado son es los el del ' +
    'entre y specific certain below specified identified these'
  ).split(' '),
);

const quantityWords = new Set(
  (
    'unit units bottle bottles box boxes case cases piece pieces pcs pc pack packs cartons carton ml g kg oz l mg mm cm lb lbs days months years day month year ' +
    'stück stuck flaschen flasche packungen kartons unités unites pièces boîtes flacons unidades cajas frascos percent cartridges needles lots batches products ' +
    'people customers clients reports complaints studios countries times hours weeks tubes vials count ct x each pages'
  ).split(' '),
);

const measure = /^\d+(?:[.,/]\d+)?(?:ml|cl|g|kg|oz|l|mg|mm|cm|µl|ul|lbs?|pcs|ct|x|rd|st|nd|th|c|f)$/i;
const listWords = new Set([
  'and',
  'und',
  'or',
  'et',
  'y',
  'e',
  'oder',
  'ou',
  'o',
  'sowie',
  'en',
  'plus',
  'also',
]);

const capitalListWords: Record<string, string> = { AND: 'and', OR: 'or', UND: 'und', PLUS: 'plus' };

export function isFiller(token: Token): boolean {
  if (token.kind !== 'word' || hasDigit(token.text) || isLoneCapital(token.text)) return false;
  const word = token.plain;
  return fillers.has(word) && (!isCapitals(token.text) || everyday.has(word));
}

export function isListWord(token: Token): boolean {
  if (token.kind !== 'word') return token.text === '&';
  // In capitals a small word of another language may be the letters of a code: ET 12-34.
  return listWords.has(isCapitals(token.text) ? (capitalListWords[token.text] ?? '') : token.text);
}

function isLoneCapital(text: string): boolean {
  return text.length === 1 && text !== text.toLowerCase();
}

/** Whether a word may be a code where a code is expected. */
export function mayBeCode(token: Token | undefined): token is Token {
  if (token === undefined || token.kind !== 'word' || token.text.length > longestCode) return false;
  if (hasDigit(token.text)) return true;
  if (isLoneCapital(token.text)) return true;
  return token.text.length <= 12 && isCapitals(token.text) && !everyday.has(token.text.toLowerCase());
}

/** Whether a word is taken for a code even where none is expected: letters and digits mixed, or many digits. */
export function isStrongCode(token: Token): boolean {
  if (token.kind !== 'word' || token.text.length > longestCode || measure.test(token.text)) return false;
  const digits = token.text.replace(/\D/g, '').length;
  return digits >= 5 || (digits >= 2 && token.text.length >= 4 && /\p{Lu}/u.test(token.text));
}

function isCapitals(text: string): boolean {
  return text === text.toUpperCase() && text !== text.toLowerCase();
}

/** `12 bottles`, `(2 units)`, `10 ml`: a number that counts or measures. */
export function isQuantity(tokens: readonly Token[], index: number): boolean {
  const token = tokens[index];
  const following = tokens[index + 1];
  if (token === undefined || !/^\d{1,6}(?:[.,]\d+)?$/.test(token.text)) return false;
  if (following?.text === '%') return true;
  return (
    following?.kind === 'word' && following.gap !== 'wide' && quantityWords.has(following.text.toLowerCase())
  );
}

export interface CodeSurroundings {
  /** Whether the token begins something else: a label, the name of a product, a word of a range, a date. */
  isTaken: (index: number) => boolean;
  /** Shapes of the codes that were read before in this list. */
  shapes: ReadonlySet<string>;
}

/** Reads the code that begins at a token where a code may stand; null when none does. */
export function codeEntryAt(
  tokens: readonly Token[],
  index: number,
  around: CodeSurroundings,
): CodeEntry | null {
  const pieces = piecesAt(tokens, index, around);
  if (pieces.length === 0) return null;
  const first = pieces[0] ?? index;
  const last = pieces[pieces.length - 1] ?? index;
  const text = (place: number): string => tokens[place]?.text ?? '';
  const single = (place: number): CodeEntry['codes'][number] => ({
    text: text(place),
    from: place,
    to: place,
  });
  if (pieces.length === 1) return { codes: [single(first)], alternatives: [], next: first + 1 };
  const shapes = pieces.map((place) => shapeOf(text(place)));
  const known = shapes.every((shape) => around.shapes.has(shape) && hasDigit(shape));
  const alike = pieces.length > 2 && shapes.every((shape) => shape === shapes[0] && hasDigit(shape));
  const joined = pieces.map(text).join(' ');
  if (known || alike || pieces.length > mostPieces || joined.length > longestCode) {
    return { codes: pieces.map(single), alternatives: [], next: last + 1 };
  }
  // Letters before one word with digits belong to it: AB 12-34.
  const sure = pieces
    .slice(0, -1)
    .every((place) => !hasDigit(text(place)) && !doubtful.has(text(place).toLowerCase()));
  const alone = pieces.map(text).filter((piece) => hasDigit(piece) && piece.length >= 3);
  return {
    codes: [{ text: joined, from: first, to: last }],
    alternatives: sure ? [] : alone,
    next: last + 1,
  };
}

/** The words of an entry: each after one space, and each such as a code may have. */
function piecesAt(tokens: readonly Token[], index: number, around: CodeSurroundings): number[] {
  if (!mayBeCode(tokens[index]) || isQuantity(tokens, index)) return [];
  const pieces = [index];
  // A list whose commas are all missing may be long; each piece is looked at once.
  for (let place = index + 1; ; place++) {
    const token = tokens[place];
    if (token?.gap !== 'space' || !isPiece(token) || around.isTaken(place) || isQuantity(tokens, place))
      break;
    if (!hasDigit(token.text) && isPairedWithLower(tokens, place)) break;
    pieces.push(place);
  }
  const withDigit = pieces.findLastIndex((place) => hasDigit(tokens[place]?.text ?? ''));
  // Letters alone are a code only by themselves.
  return withDigit < 0 ? pieces.slice(0, 1) : pieces;
}

function isPiece(token: Token): boolean {
  if (token.kind !== 'word' || token.text.length > longestCode || measure.test(token.text)) return false;
  if (hasDigit(token.text)) return true;
  return (
    token.text.length <= 6 &&
    isCapitals(token.text) &&
    !everyday.has(token.text.toLowerCase()) &&
    !isListWord(token)
  );
}

/** Capitals that begin a phrase of small words, such as a brand in running text. */
function isPairedWithLower(tokens: readonly Token[], place: number): boolean {
  const following = tokens[place + 1];
  return (
    following?.kind === 'word' &&
    following.gap === 'space' &&
    !hasDigit(following.text) &&
    !isCapitals(following.text) &&
    !isListWord(following)
  );
}
