/**
 * A text as the rules of reading see it: look-alike letters, wide digits and odd spaces folded to plain ones, marks
 * that nobody sees left out. Each character remembers where it stands in the text as it is kept, so that a span always
 * leads back to what was written.
 *
 * Guarantees: one pass, linear in the length of the text; the text itself is never changed.
 */

/** Places in the text as it is kept: UTF-16 code units, the end excluded. */
export interface TextSpan {
  start: number;
  end: number;
}

/** Something that was folded, where it stands, and to what. */
export interface Folding {
  kind: 'look-alike letters' | 'invisible marks' | 'control characters';
  span: TextSpan;
  seen: string;
  /** Empty for what was left out. */
  folded: string;
}

export interface FoldedText {
  text: string;
  /** Where the folded character of this index begins in the text as it is kept; one more than there are characters. */
  starts: Uint32Array;
  /** Where it ends. */
  ends: Uint32Array;
  /** At most `maximumFoldings` of each kind, in the order of the text. */
  foldings: Folding[];
  /** How many of each kind there are in all. */
  counts: Record<Folding['kind'], number>;
}

/** More of one kind tell a person nothing more. */
export const maximumFoldings = 20;

/** Letters of other scripts that cannot be told from Latin ones in print [C]. */
const lookAlikes = new Map<string, string>(
  Object.entries({
    // Cyrillic
    А: 'A',
    В: 'B',
    С: 'C',
    Е: 'E',
    Н: 'H',
    І: 'I',
    Ј: 'J',
    К: 'K',
    М: 'M',
    О: 'O',
    Р: 'P',
    Ѕ: 'S',
    Т: 'T',
    Х: 'X',
    У: 'Y',
    Ү: 'Y',
    З: '3',
    а: 'a',
    с: 'c',
    е: 'e',
    і: 'i',
    ј: 'j',
    о: 'o',
    р: 'p',
    ѕ: 's',
    х: 'x',
    у: 'y',
    һ: 'h',
    ԁ: 'd',
    ԛ: 'q',
    ԝ: 'w',
    Ԛ: 'Q',
    Ԝ: 'W',
    // Greek
    Α: 'A',
    Β: 'B',
    Ε: 'E',
    Ζ: 'Z',
    Η: 'H',
    Ι: 'I',
    Κ: 'K',
    Μ: 'M',
    Ν: 'N',
    Ο: 'O',
    Ρ: 'P',
    Τ: 'T',
    Υ: 'Y',
    Χ: 'X',
    ο: 'o',
    ι: 'i',
    ν: 'v',
    ρ: 'p',
  }),
);

/** The zeros of digits that are written in other scripts. */
const zeros = [0x0660, 0x06f0, 0x0966, 0x09e6, 0x0e50, 0xff10];
const invisible = /^(?:\p{Cf}|\p{Variation_Selector}|\u034F|\u115F|\u1160|\u3164)$/u;
const isOtherScript = /^[\p{Script=Cyrillic}\p{Script=Greek}]$/u;
const hyphens = new Set(['\u2010', '\u2011', '\u2212', '\u00AD', '\uFE63', '\u2043']);
const dashes = new Set(['\u2012', '\u2013', '\u2014', '\u2015', '\uFE58']);
const lineEnds = new Set(['\u2028', '\u2029', '\u000B', '\u000C', '\u0085']);
const bullets = new Set([
  '\u2022',
  '\u2023',
  '\u25AA',
  '\u25CF',
  '\u25E6',
  '\u00B7',
  '\u2219',
  '\u25A0',
  '\uF0B7',
]);

export function foldText(raw: string): FoldedText {
  if (plainText.test(raw)) return unfolded(raw);
  const characters: string[] = [];
  const starts = new Uint32Array(raw.length + 1);
  const ends = new Uint32Array(raw.length + 1);
  const counts = { 'look-alike letters': 0, 'invisible marks': 0, 'control characters': 0 };
  const foldings: Folding[] = [];
  const note = (kind: Folding['kind'], start: number, end: number, folded: string): void => {
    counts[kind] += 1;
    if (counts[kind] > maximumFoldings) return;
    foldings.push({ kind, span: { start, end }, seen: raw.slice(start, end), folded });
  };
  let wordStart = -1;
  let foreign = 0;
  /** A word is folded only when each foreign letter of it looks like a Latin one: real words of other scripts stay. */
  const endWord = (rawEnd: number): void => {
    if (wordStart >= 0 && foreign > 0) foldWord(characters, wordStart, starts, rawEnd, note);
    wordStart = -1;
    foreign = 0;
  };
  let place = 0;
  while (place < raw.length) {
    const code = raw.charCodeAt(place);
    const width = code >= 0xd800 && code < 0xdc00 && place + 1 < raw.length ? 2 : 1;
    const seen = raw.slice(place, place + width);
    const plain = code < 0x80 ? plainAscii(code, seen) : plainOther(seen);
    if (plain === '' && seen !== '\r') note('invisible marks', place, place + width, '');
    if (plain !== '') {
      if (code < 0x20 && plain === ' ') note('control characters', place, place + 1, ' ');
      if (isWordCharacter(plain)) {
        if (wordStart < 0) wordStart = characters.length;
        if (code >= 0x80 && isOtherScript.test(plain)) foreign += 1;
      } else {
        endWord(place);
      }
      starts[characters.length] = place;
      ends[characters.length] = place + width;
      characters.push(plain);
    }
    place += width;
  }
  endWord(raw.length);
  starts[characters.length] = raw.length;
  ends[characters.length] = raw.length;
  return { text: characters.join(''), starts, ends, foldings, counts };
}

const plainText = /^[\t\n -~]*$/;

/** A text in which nothing needs to be folded. */
function unfolded(raw: string): FoldedText {
  const starts = new Uint32Array(raw.length + 1);
  const ends = new Uint32Array(raw.length + 1);
  for (let place = 0; place <= raw.length; place++) {
    starts[place] = place;
    ends[place] = Math.min(place + 1, raw.length);
  }
  const counts = { 'look-alike letters': 0, 'invisible marks': 0, 'control characters': 0 };
  return { text: raw, starts, ends, foldings: [], counts };
}

/** The span in the text as it is kept of the folded characters from `start` up to `end`, which is excluded. */
export function spanOf(folded: FoldedText, start: number, end: number): TextSpan {
  const from = folded.starts[start] ?? 0;
  return { start: from, end: end > start ? (folded.ends[end - 1] ?? from) : from };
}

/** What a word of the text is read as: the fold of a slice of it. */
export function foldedSlice(raw: string): string {
  return foldText(raw).text;
}

function plainAscii(code: number, seen: string): string {
  if (code === 0x0d) return '';
  if (code === 0x1d || code === 0x09 || code === 0x0a) return seen;
  if (code === 0x0b || code === 0x0c) return '\n';
  return code < 0x20 || code === 0x7f ? ' ' : seen;
}

/** One folded character is one UTF-16 unit, so that places can be counted in either. */
const known = new Map<string, string>();
function plainOther(seen: string): string {
  const before = known.get(seen);
  if (before !== undefined) return before;
  const plain = foldOther(seen);
  if (known.size < 4096) known.set(seen, plain);
  return plain;
}

function foldOther(seen: string): string {
  const point = seen.codePointAt(0) ?? 0;
  if (lineEnds.has(seen)) return '\n';
  if (hyphens.has(seen)) return seen === '\u00AD' ? '' : '-';
  if (dashes.has(seen)) return '\u2013';
  if (bullets.has(seen)) return '\u2022';
  if (invisible.test(seen)) return '';
  if (/^[\p{Zs}]$/u.test(seen)) return ' ';
  if ('\u2018\u2019\u201A\u2032\u00B4'.includes(seen)) return "'";
  if ('\u201C\u201D\u201E\u00AB\u00BB\u2033'.includes(seen)) return '"';
  const zero = zeros.find((first) => point >= first && point < first + 10);
  if (zero !== undefined) return String(point - zero);
  // Wide forms and mathematical alphabets are the plain letter in another dress (Unicode NFKC).
  if ((point >= 0xff01 && point <= 0xff5e) || (point >= 0x1d400 && point <= 0x1d7ff)) {
    const plain = seen.normalize('NFKC');
    if (plain.length === 1) return plain;
  }
  if (seen === '\u3001' || seen === '\u060C') return ',';
  if (seen === '\u061B') return ';';
  return seen.length === 1 ? seen : '\uFFFD';
}

function isWordCharacter(character: string): boolean {
  const code = character.charCodeAt(0);
  if (code < 0x80)
    return (code >= 48 && code <= 57) || (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
  return code >= 0xc0 && character !== '\u2013' && character !== '\u2022' && character !== '\uFFFD';
}

function foldWord(
  characters: string[],
  wordStart: number,
  starts: Uint32Array,
  rawEnd: number,
  note: (kind: Folding['kind'], start: number, end: number, folded: string) => void,
): void {
  const folded: string[] = [];
  for (let index = wordStart; index < characters.length; index++) {
    const character = characters[index] ?? '';
    const plain = lookAlikes.get(character) ?? (isOtherScript.test(character) ? null : character);
    if (plain === null) return;
    folded.push(plain);
  }
  for (let index = 0; index < folded.length; index++) characters[wordStart + index] = folded[index] ?? '';
  note('look-alike letters', starts[wordStart] ?? 0, rawEnd, folded.join(''));
}
