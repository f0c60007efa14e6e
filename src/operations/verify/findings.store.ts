import type { Concern, Finding } from './report-words.js';

const kept = 100;
/** What belongs to no studio may name rows of others. */
const notOfOneStudio =
  'Something is wrong with the database or the backups themselves. Whoever runs the service sees what with `npm run cli -- verify`.';

/** Collects what is wrong: the first so many in words, all of them counted. */
export class Findings {
  readonly first: Finding[] = [];
  count = 0;

  /** @param concern left out: everybody's */
  constructor(private readonly concern?: Concern) {}

  /** Whether those to whom the findings are told may know what an entry of a studio says. */
  mayTellOf(studioId: string): boolean {
    return this.concern === undefined || studioId === this.concern.studioId;
  }

  /** @param words asked for only while findings are still kept */
  async add(
    about: Omit<Finding, 'message'>,
    words: string | (() => string | Promise<string>),
  ): Promise<void> {
    if (!this.isOfConcern(about)) return;
    this.count += 1;
    if (this.first.length >= kept) return;
    if (this.concern && about.studioId === null) {
      this.first.push({ check: about.check, studioId: null, table: null, id: null, message: notOfOneStudio });
      return;
    }
    const place = this.first.push({ ...about, message: '' }) - 1;
    this.first[place] = { ...about, message: typeof words === 'string' ? words : await words() };
  }

  private isOfConcern({ studioId }: Pick<Finding, 'studioId'>): boolean {
    return (
      this.concern === undefined ||
      studioId === null ||
      studioId === this.concern.studioId ||
      studioId === this.concern.chainId
    );
  }
}
