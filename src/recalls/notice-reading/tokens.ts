/** A word, a sign or a line end of a folded text. Places are those of the folded text, the end excluded. */
export interface Token {
  kind: 'word' | 'sign' | 'line end' | 'blank line';
  text: string;
  /** The word as it is compared: small letters without accents; empty for a word of more than 40 characters. */
  plain: string;
  start: number;
  end: number;
  /** What stands before it on its line: nothing, one space, or several spaces or a tab, as between columns. */
  gap: 'none' | 'space' | 'wide';
  /** How many tabs are in that gap. */
  tabs: number;
}

/** Signs that belong to a code or date when they stand between two of its letters or digits. */
const joiners = new Set(['-', '.', '/', '_', '+']);

/**
 * Takes a folded text apart, in one pass. A word is letters and digits with single joiners between them: `12.03.15`,
 * `AB-12/3`; what follows a word that ends a sentence or stands before a colon is a sign of its own.
 */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let gap: Token['gap'] = 'none';
  let tabs = 0;
  // Space around the whole says nothing.
  const end = text.trimEnd().length;
  let place = text.length - text.trimStart().length;
  while (place < end) {
    const character = text.charAt(place);
    if (character === '\n') {
      const lineEnd = endOfLines(text, place);
      const lines = countLines(text, place, lineEnd);
      tokens.push({
        kind: lines > 1 ? 'blank line' : 'line end',
        text: '\n',
        plain: '\n',
        start: place,
        end: lineEnd,
        gap: 'none',
        tabs,
      });
      place = lineEnd;
      gap = 'none';
      tabs = 0;
      continue;
    }
    if (character === ' ' || character === '\t') {
      gap = character === '\t' || gap !== 'none' ? 'wide' : 'space';
      if (character === '\t') tabs += 1;
      place += 1;
      continue;
    }
    const wordEnd = isWordCharacter(text.charCodeAt(place)) ? endOfWord(text, place) : place + 1;
    const kind = isWordCharacter(text.charCodeAt(place)) ? 'word' : 'sign';
    const seen = text.slice(place, wordEnd);
    tokens.push({
      kind,
      text: seen,
      plain: kind === 'word' ? plainOf(seen) : seen,
      start: place,
      end: wordEnd,
      gap,
      tabs,
    });
    place = wordEnd;
    gap = 'none';
    tabs = 0;
  }
  return tokens;
}

const longestPlain = 40;
const onlySmallAscii = /^[a-z0-9]*$/;
const onlyAscii = /^[ -~]*$/;

function plainOf(word: string): string {
  return word.length > longestPlain ? '' : plainWord(word);
}

/** A word as it is compared: small letters without accents. */
export function plainWord(word: string): string {
  if (onlySmallAscii.test(word)) return word;
  const small = word.toLowerCase();
  return onlyAscii.test(small) ? small : small.normalize('NFD').replace(/\p{M}/gu, '').replaceAll('ß', 'ss');
}

/** Letters and digits of any script. */
export function isWordCharacter(code: number): boolean {
  if (code < 0x80)
    return (code >= 48 && code <= 57) || (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
  return (
    code >= 0xc0 && code !== 0xd7 && code !== 0xf7 && !(code >= 0x2000 && code <= 0x2bff) && code < 0xe000
  );
}

function endOfWord(text: string, start: number): number {
  let place = start + 1;
  while (place < text.length) {
    if (isWordCharacter(text.charCodeAt(place))) place += 1;
    else if (
      joiners.has(text.charAt(place)) &&
      isWordCharacter(text.charCodeAt(place + 1)) &&
      !beginsSentence(text, place)
    )
      place += 2;
    else break;
  }
  return place;
}

/** `A12.The`: a full stop whose space was forgotten. */
function beginsSentence(text: string, place: number): boolean {
  return text.charAt(place) === '.' && /^[A-Z][a-z]$/.test(text.slice(place + 1, place + 3));
}

function endOfLines(text: string, start: number): number {
  let place = start;
  while (
    place < text.length &&
    (text.charAt(place) === '\n' || text.charAt(place) === ' ' || text.charAt(place) === '\t')
  ) {
    place += 1;
  }
  // Spaces before the first word of a line belong to that line.
  return text.lastIndexOf('\n', place - 1) + 1;
}

function countLines(text: string, start: number, end: number): number {
  let lines = 0;
  for (let place = start; place < end; place++) if (text.charAt(place) === '\n') lines += 1;
  return lines;
}
