/** Texts of a megabyte, made to be hard to read: the time grows with the length and not faster. */
import { describe, expect, it } from 'vitest';
import { SeededRandom } from '../../../tests/support/random.js';
import { maximumNoticeCharacters, readNotice } from './notice-reading.js';

const today = '2026-11-26';
const knownProducts = Array.from({ length: 2_000 }, (_, index) => ({
  productId: String(index),
  makerName: `Northlight ${index % 20}`,
  productName: `Brow Ink ${index}`,
  shade: `Walnut ${index}`,
  gtins: [],
}));

const hard: Record<string, string> = {
  'one digit': '7',
  'lot words': 'lot ',
  commas: ',',
  'nested brackets': '([{',
  'marks from right to left': '\u200f',
  'lots with expiries': 'Lot A1, Exp 10/15; ',
  expiries: 'exp 10/15 ',
  'numbers of lists': '1) 2) ',
  'element strings that go on': '(01)09501101530003(10)A',
  'labels of danger': 'risk: ',
  'heads of tables': 'Product\tLot\tExpiry\n',
  'names of the register': 'brow ink ',
  'pieces of codes': 'AB 12 ',
  'look-alike letters': '\u0410A ',
  'spaces and line ends': ' \n',
  'unfinished ranges': 'lot 1 to ',
};

/** Seconds of the processor, since other tests keep the machine busy. */
function secondsOf(text: string): number {
  const before = process.cpuUsage();
  readNotice(text, { today, knownProducts });
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

describe('a text of a megabyte', () => {
  it('is read in a time that grows with its length only', () => {
    const figures: string[] = [];
    const random = SeededRandom.ofThisRun();
    // In the soak all are read whole; else some, chosen anew each time, and an eighth of the others.
    const names = Object.keys(hard);
    const readWhole = new Set(process.env.SOAK ? names : random.pickSome(names, 5));
    readNotice('Lot A1', { today, knownProducts });
    for (const [name, piece] of Object.entries(hard)) {
      const text = piece
        .repeat(Math.ceil(maximumNoticeCharacters / piece.length))
        .slice(0, readWhole.has(name) ? maximumNoticeCharacters : maximumNoticeCharacters / 8);
      const seconds = secondsOf(text);
      figures.push(`${readWhole.has(name) ? 'a megabyte' : 'an eighth'} of ${name} ${seconds.toFixed(2)}`);
      // Eight times the text takes eight times as long; what grew as its square would take sixty-four times.
      if (seconds > 2) {
        const eighth = secondsOf(text.slice(0, text.length / 8));
        expect(seconds, name).toBeLessThan(eighth * 24);
      }
      expect(seconds, name).toBeLessThan(readWhole.has(name) ? 10 : 2);
    }
    process.stdout.write(`SEED=${random.seed}, in seconds of the processor: ${figures.join(', ')}\n`);
  }, 120_000);
});
