/** The sentences of remarks: what was seen, what it was read as, what the person does. */
import type { TextSpan } from './folded-text.js';
import type { NoticeRemark, NoticeRemarkCode, RemarkFacts } from './notice-reading.js';

/** More of one kind tell a person nothing more; the last one says how many there are. */
export const maximumRemarksOfAKind = 20;
const longestSeen = 80;

const sentences: Record<NoticeRemarkCode, (facts: Required<RemarkFacts>) => string> = {
  'nothing read': () =>
    'No lot was read in the notice, so that each lot may be meant. Read it and enter what it names.',
  'text cut': ({ allowed, count }) =>
    `The text has ${count} characters; the first ${allowed} were read. The scope is open-ended. Give the rest as a notice of its own.`,
  'too many terms': ({ allowed, count }) =>
    `The notice names ${count} lots beyond the ${allowed} that are listed. The scope is open-ended. Give the rest as a notice of its own.`,
  'too many items': ({ allowed, count }) =>
    `The notice names ${count} products beyond the ${allowed} that are listed; their lots were put with the last one, which is open-ended.`,
  'look-alike letters': ({ seen, readAs }) =>
    `"${seen}" has letters of another script that look like Latin ones. It was read as "${readAs}". Compare with the label.`,
  'invisible marks': ({ count }) =>
    `The text has ${count} marks that nobody sees, such as those that turn the direction of writing. They were left out.`,
  'control characters': ({ count }) => `The text has ${count} control characters. They were read as spaces.`,
  'ambiguous date': ({ seen, otherReadings }) =>
    `"${seen}" can be ${otherReadings.join(' or ')}. All days from the first through the last were taken. Choose the right one.`,
  'date order': ({ seen, readAs }) =>
    `Dates such as 03/04/15 were read with the ${readAs}, because of "${seen}". Compare with the notice.`,
  'date not read': ({ seen }) => `No date was read in "${seen}". Enter it if it limits which lots are meant.`,
  'date without a word': ({ seen, readAs }) =>
    `"${seen}" stands beside a lot without a word for it. It was read as its use-by date, ${readAs}.`,
  'date without a year': ({ seen }) =>
    `"${seen}" can be a month and its year, or a day whose year is not said. It was read as month and year; where it alone says which lots are meant, the scope is open-ended.`,
  'dates turned': ({ seen, readAs }) => `"${seen}" ends before it begins. It was read as ${readAs}.`,
  'several expiries': ({ seen, readAs }) =>
    `Several use-by dates stand beside the same lots ("${seen}"). All days from the first through the last were taken: ${readAs}.`,
  'code like a date': ({ seen }) =>
    `"${seen}" looks like a date but stands where lots stand. It was read as a lot.`,
  'code with O or I': ({ seen, otherReadings }) =>
    `The lot "${seen}" has letters that look like digits. It could also be ${otherReadings.join(' or ')}.`,
  'code with spaces': ({ seen, otherReadings }) =>
    `"${seen}" was read as one lot with spaces in it. It could also be several: ${otherReadings.join(', ')} were taken too. Take out what is wrong.`,
  'codes parted by spaces': ({ seen, otherReadings }) =>
    `"${seen}" was read as several lots parted by spaces: ${otherReadings.join(', ')}.`,
  'code of letters': ({ seen }) =>
    `"${seen}" was read as a lot although it has no digit. Take it out if it is a word.`,
  'code too long': ({ seen, count, allowed }) =>
    `"${seen}" stands where a lot stands but has ${count} characters; lots of at most ${allowed} are read. The scope is open-ended. Enter the lot by hand.`,
  'code apart from its word': ({ seen }) =>
    `"${seen}" stands apart from the word for lots. It was read as a lot. Take it out if it is something else.`,
  'codes without a word': ({ seen }) =>
    `No word for lots was found. "${seen}" and what looks like it were read as lots, and the scope is open-ended.`,
  'very wide range': ({ seen, count }) =>
    `The range "${seen}" spans ${count} lots. It is kept as a range and compared with the lots on record. Check both ends.`,
  'range ends differ in length': ({ seen, otherReadings }) =>
    `The ends of the range "${seen}" have different lengths.${orElse(otherReadings)} Both ends were taken as lots too. Check them.`,
  'range ends differ in letters': ({ seen }) =>
    `The ends of the range "${seen}" differ in more than one number, so nobody can tell what lies between. Both ends were taken as lots too. Check them.`,
  'range turned': ({ seen, readAs }) =>
    `The range "${seen}" ends before it begins. It was read as ${readAs}. Check both ends.`,
  'range or code': ({ seen, readAs }) =>
    `"${seen}" can be one lot or the range ${readAs}. Both were taken. Take out what is wrong.`,
  exception: ({ seen }) =>
    `"${seen}" seems to leave out lots. Nothing was left out: a scope is not narrowed by itself. Take out what the notice excepts.`,
  'open-ended': ({ seen }) => `"${seen}" says that further lots may be meant. The scope is open-ended.`,
  'number not a GTIN': ({ seen }) =>
    `"${seen}" stands where a GTIN stands but has a wrong length or check digit. It was left out. Compare with the label.`,
  'symbol not valid': ({ seen, readAs }) => `The barcode text "${seen}" is not valid: ${readAs}`,
  'name by its place': ({ seen }) =>
    `"${seen}" was read as the name of a product because of its place. Correct it if it is none.`,
  'numbering unclear': ({ seen }) =>
    `The numbers of the list do not rise evenly ("${seen}"), so its lots were put with each numbered product. Sort them by hand.`,
  'names disagree': ({ seen, readAs }) =>
    `The GTIN ${readAs} belongs to another product of the register than the name "${seen}". No product was chosen. Choose the right one.`,
  'manufactured beside codes': ({ seen, readAs }) =>
    `"${seen}" (${readAs}) was read as the date of manufacture of the lots beside it, and limits nothing.`,
  'all lots limited': ({ seen }) =>
    `"${seen}" is limited by a date that follows. Lots of that date were taken. Choose all lots if the date limits nothing.`,
};

function orElse(readings: readonly string[]): string {
  return readings.length === 0 ? '' : ` It could also mean ${readings.join(' or ')}, which was taken.`;
}

export function remarkSentence(code: NoticeRemarkCode, facts: RemarkFacts): string {
  return sentences[code]({ seen: '', readAs: '', otherReadings: [], count: 0, allowed: 0, ...facts });
}

/** Collects remarks, the first of each kind. */
export class RemarkList {
  readonly remarks: NoticeRemark[] = [];
  private readonly counts = new Map<NoticeRemarkCode, number>();

  constructor(private readonly text: string) {}

  /** `seen` is what stands in the span unless it is given. */
  add(code: NoticeRemarkCode, span: TextSpan | null, facts: RemarkFacts = {}): void {
    const count = (this.counts.get(code) ?? 0) + 1;
    this.counts.set(code, count);
    if (count > maximumRemarksOfAKind) return;
    const seen =
      facts.seen ??
      (span === null
        ? undefined
        : this.text.slice(span.start, Math.min(span.end, span.start + 4 * longestSeen)));
    const shown: RemarkFacts = seen === undefined ? { ...facts } : { ...facts, seen: shortened(seen) };
    this.remarks.push({ code, span, facts: shown, message: remarkSentence(code, shown) });
  }

  has(code: NoticeRemarkCode): boolean {
    return this.counts.has(code);
  }

  /** In the order of the text; those about the whole first. */
  inOrder(): NoticeRemark[] {
    return [...this.remarks].sort((one, other) => (one.span?.start ?? -1) - (other.span?.start ?? -1));
  }

  /** How many of a kind were seen, those beyond the limit too. */
  count(code: NoticeRemarkCode): number {
    return this.counts.get(code) ?? 0;
  }
}

function shortened(seen: string): string {
  const plain = seen.replace(/\s+/g, ' ').trim();
  return plain.length > longestSeen ? `${plain.slice(0, longestSeen - 1)}…` : plain;
}
