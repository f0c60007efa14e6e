/** What begins at which token: labels, names of the register, element strings, numbers of a list. One pass. */
import type { KnownNames, NameMention } from './known-names.js';
import { type LabelHit, labelAt } from './label-words.js';
import type { Token } from './tokens.js';

export interface NoticeMarks {
  labels: Marks<LabelHit>;
  names: Marks<NameMention[]>;
}

/** What begins at which token. */
export class Marks<Mark> {
  private readonly marks: (Mark | undefined)[];
  /** The tokens at which something begins, in order. */
  readonly places: number[] = [];

  constructor(tokens: number) {
    this.marks = new Array<Mark | undefined>(tokens).fill(undefined);
  }

  set(index: number, mark: Mark): void {
    this.marks[index] = mark;
    this.places.push(index);
  }

  get(index: number): Mark | undefined {
    return this.marks[index];
  }

  has(index: number): boolean {
    return this.marks[index] !== undefined;
  }
}

/** The longer of a label and a name wins; a name wins over a label of the same length. */
export function marksOf(tokens: readonly Token[], knownNames: KnownNames): NoticeMarks {
  const marks: NoticeMarks = { labels: new Marks(tokens.length), names: new Marks(tokens.length) };
  for (let index = 0; index < tokens.length; ) {
    if (tokens[index]?.kind !== 'word') {
      index += 1;
      continue;
    }
    const label = labelAt(tokens, index);
    const names = knownNames.at(tokens, index);
    const nameEnd = names[0]?.next ?? index;
    if (
      names.length > 0 &&
      (label === null || nameEnd > label.last + 1 || (nameEnd > label.last && !label.colon))
    ) {
      marks.names.set(index, names);
      index = nameEnd;
    } else if (label !== null) {
      marks.labels.set(index, label);
      // What a label ends with may begin another one: "Exp. Lot".
      index = label.last + 1;
    } else {
      index += 1;
    }
  }
  return marks;
}

/** `1)`, `a)`, `(2)`, `1) - 5)`, `1) and 2)`, and `3.` at the begin of a line: the numbers, and the token after. */
export function numberingAt(
  tokens: readonly Token[],
  index: number,
): { keys: string[]; next: number } | null {
  const token = tokens[index];
  if (token === undefined || (token.text !== '(' && (token.kind !== 'word' || token.text.length > 2)))
    return null;
  const before = tokens[index - 1];
  const atStart = before === undefined || before.kind === 'line end' || before.kind === 'blank line';
  if (!atStart && !/^(?:[;:.,•*]|and|und|et|y|&)$/.test(before.text) && tokens[index]?.gap !== 'wide')
    return null;
  const keys: string[] = [];
  let at = index;
  for (;;) {
    const one = oneNumber(tokens, at, atStart && keys.length === 0);
    if (one === null) break;
    const last = keys[keys.length - 1];
    if (last !== undefined && isRangeSign(tokens[at - 1]?.text)) keys.push(...numbersBetween(last, one.key));
    keys.push(one.key);
    at = one.next;
    const joint = tokens[at];
    if (joint === undefined || !(isRangeSign(joint.text) || /^(?:and|und|et|y|&|,)$/.test(joint.text))) break;
    if (oneNumber(tokens, at + 1, false) === null) break;
    at += 1;
    if (keys.length > 100) break;
  }
  return keys.length === 0 ? null : { keys, next: at };
}

function oneNumber(
  tokens: readonly Token[],
  index: number,
  atStart: boolean,
): { key: string; next: number } | null {
  const opened = tokens[index]?.text === '(';
  const at = opened ? index + 1 : index;
  const token = tokens[at];
  if (token?.kind !== 'word' || !/^(?:\d{1,2}|[a-z])$/i.test(token.text)) return null;
  const close = tokens[at + 1];
  if (close?.text === ')' && close.gap === 'none') return { key: token.text.toLowerCase(), next: at + 2 };
  const dot =
    atStart && !opened && close?.text === '.' && close.gap === 'none' && tokens[at + 2]?.gap === 'space';
  return dot && /^\d/.test(token.text) ? { key: token.text, next: at + 2 } : null;
}

function isRangeSign(text: string | undefined): boolean {
  return text === '-' || text === '\u2013' || text === 'to' || text === 'bis';
}

function numbersBetween(from: string, through: string): string[] {
  const [first, last] = [Number(from), Number(through)];
  if (!Number.isInteger(first) || !Number.isInteger(last)) {
    const [start, end] = [from.charCodeAt(0), through.charCodeAt(0)];
    return Array.from({ length: Math.max(0, Math.min(end - start - 1, 24)) }, (_, step) =>
      String.fromCharCode(start + 1 + step),
    );
  }
  return Array.from({ length: Math.max(0, Math.min(last - first - 1, 98)) }, (_, step) =>
    String(first + 1 + step),
  );
}
