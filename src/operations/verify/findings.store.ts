import type { Finding } from './verify-report.js';

const kept = 100;

/** Collects what is wrong: the first so many in words, all of them counted. */
export class Findings {
  readonly first: Finding[] = [];
  count = 0;

  /** @param words asked for only while findings are still kept */
  async add(
    about: Omit<Finding, 'message'>,
    words: string | (() => string | Promise<string>),
  ): Promise<void> {
    this.count += 1;
    if (this.first.length >= kept) return;
    const place = this.first.push({ ...about, message: '' }) - 1;
    this.first[place] = { ...about, message: typeof words === 'string' ? words : await words() };
  }
}
