import { describe, expect, it } from 'vitest';
import { LotGrader } from '../../src/stock/lot-matching/grade-lot.js';
import { SeededRandom } from '../support/random.js';
import { type CorpusCase, type CorpusLot, corpusCase } from '../support/recall-corpus.js';

const notices = process.env.SOAK ? 100_000 : 10_000;

interface Judged extends CorpusLot {
  grade: 'certain' | 'possible' | 'not';
  of: CorpusCase;
}

const share = (part: number, whole: number) =>
  `${((100 * part) / Math.max(whole, 1)).toFixed(2)} % (${part} of ${whole})`;

describe('matching on a corpus of notices and inventories with typing errors', () => {
  it('misses no lot that is meant, and is certain of none that is not, where codes were written down rightly', {
    timeout: notices * 12,
  }, () => {
    const random = SeededRandom.ofThisRun();
    let lots = 0;
    const meant = { all: 0, found: 0, plain: 0, plainCertain: 0 };
    const certain = { all: 0, right: 0, plain: 0, plainRight: 0 };
    const possible = { all: 0, false: 0 };
    const missed: Judged[] = [];
    const wronglyCertain: Judged[] = [];
    const notCertain: Judged[] = [];
    const shown = ({ of, facts, grade, disturbances, isMeant }: Judged) =>
      JSON.stringify({ grade, isMeant, disturbances, facts, item: of.scope.items[0] });
    for (let notice = 0; notice < notices; notice += 1) {
      const of = corpusCase(random);
      const grader = new LotGrader(of.scope);
      for (const lot of of.lots) {
        lots += 1;
        const { grade } = grader.grade(lot.facts);
        const judged: Judged = { ...lot, grade, of };
        const isPlain = lot.disturbances.length === 0;
        if (lot.isMeant) {
          meant.all += 1;
          if (grade === 'not') missed.push(judged);
          else meant.found += 1;
          if (isPlain && of.namesAll) {
            meant.plain += 1;
            if (grade === 'certain') meant.plainCertain += 1;
            else notCertain.push(judged);
          }
        }
        if (grade === 'certain') {
          certain.all += 1;
          if (lot.isMeant) certain.right += 1;
          if (isPlain) {
            certain.plain += 1;
            if (lot.isMeant) certain.plainRight += 1;
            else wronglyCertain.push(judged);
          }
        }
        if (grade === 'possible') {
          possible.all += 1;
          if (!lot.isMeant) possible.false += 1;
        }
      }
    }
    process.stdout.write(
      `lot matching: ${notices} notices, ${lots} lots, SEED=${random.seed}\n` +
        `  recall: ${share(meant.found, meant.all)} of the lots meant are certain or possible; ` +
        `${share(meant.plainCertain, meant.plain)} of those written down rightly are certain\n` +
        `  precision: ${share(certain.plainRight, certain.plain)} of certain lots written down rightly are meant; ` +
        `${share(certain.right, certain.all)} of all certain ones\n` +
        `  for a person to decide: ${(possible.all / notices).toFixed(2)} possible lots a notice, ` +
        `${share(possible.false, possible.all)} of them not meant\n`,
    );
    expect(missed.slice(0, 3).map(shown), 'meant and missed').toEqual([]);
    expect(wronglyCertain.slice(0, 3).map(shown), 'certain and not meant').toEqual([]);
    expect(notCertain.slice(0, 3).map(shown), 'written down rightly and not certain').toEqual([]);
    expect(meant.plain).toBeGreaterThan(notices / 4);
    expect(meant.all - meant.plain).toBeGreaterThan(notices / 4);
  });
});
