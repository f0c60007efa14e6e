/** Texts of a megabyte, made to be hard to read: the time grows with the length and not faster. */
import { describe, expect, it } from 'vitest';
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
    readNotice('Lot A1', { today, knownProducts });
    for (const [name, piece] of Object.entries(hard)) {
      const whole = piece
        .repeat(Math.ceil(maximumNoticeCharacters / piece.length))
        .slice(0, maximumNoticeCharacters);
      const seconds = secondsOf(whole);
      figures.push(`${name} ${seconds.toFixed(2)}`);
      // Eight times the text takes eight times as long; what grew as its square would take sixty-four times.
      if (seconds > 2) {
        const eighth = secondsOf(whole.slice(0, maximumNoticeCharacters / 8));
        expect(seconds, name).toBeLessThan(eighth * 24);
      }
      expect(seconds, name).toBeLessThan(10);
    }
    process.stdout.write(`a megabyte of … in seconds of the processor: ${figures.join(', ')}\n`);
  }, 120_000);
});
