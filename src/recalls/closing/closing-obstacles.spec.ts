import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closingObstacles } from '../vocabulary.js';
import {
  type ClosingFacts,
  explainedPieces,
  notOverridden,
  obstaclesTo,
  obstacleWords,
} from './closing-obstacles.js';

const done: ClosingFacts = {
  lots: { affected: 2, notAffected: 1, undecided: 0 },
  clients: { exposed: 9, reached: 6, refused: 1, unreachable: 1, triedInVain: 0, notTried: 0, erased: 1 },
  containers: { toFind: 4, found: 4, notFound: 0, notLookedFor: 0 },
  remaining: { containers: 0, pieces: 0, microlitres: 0 },
  balance: { lots: 2, pieces: 40, missingPieces: 0, unexplainedPieces: 0 },
};
const named = (facts: ClosingFacts, kind: 'recall' | 'drill' = 'recall') =>
  obstaclesTo(kind, facts).map(({ obstacle }) => obstacle);

describe('what stands against closing', () => {
  it('is nothing when all is decided, told, found, disposed of and explained; nobody can tell who was erased', () => {
    expect(obstaclesTo('recall', done)).toEqual([]);
  });

  it.each<[string, Partial<ClosingFacts>, string]>([
    [
      'undecided lots',
      { lots: { ...done.lots, undecided: 2 } },
      '2 of 5 lots may be meant, and nobody has decided yet.',
    ],
    [
      'clients not told',
      { clients: { ...done.clients, notTried: 2, triedInVain: 1 } },
      '3 of 9 exposed clients were not told: 2 not tried yet, 1 tried in vain.',
    ],
    [
      'containers not found',
      { containers: { toFind: 7, found: 4, notFound: 1, notLookedFor: 2 } },
      '3 of 7 containers are not found: 2 not looked for yet, 1 looked for in vain.',
    ],
    [
      'stock without disposition',
      { remaining: { containers: 2, pieces: 15, microlitres: 9_000 } },
      '2 containers with 15 pieces are still here and neither returned nor destroyed.',
    ],
    [
      'pieces unexplained',
      { balance: { ...done.balance, unexplainedPieces: 3 } },
      '3 of 40 pieces are not accounted for.',
    ],
  ])('is %s, alone, with its numbers', (obstacle, facts, words) => {
    const found = obstaclesTo('recall', { ...done, ...facts });
    expect(found.map((each) => each.obstacle)).toEqual([obstacle]);
    expect(found.map(obstacleWords)).toEqual([words]);
  });

  it('does not count what is in containers that are not found as unexplained once more', () => {
    const facts = { ...done, balance: { ...done.balance, missingPieces: 5 } };
    expect(named(facts)).toEqual([]);
    expect(explainedPieces(facts)).toBe(35);
  });

  it('asks in a drill neither for telling anybody nor for disposing of anything', () => {
    const facts: ClosingFacts = {
      ...done,
      clients: { ...done.clients, notTried: 3 },
      remaining: { containers: 1, pieces: 1, microlitres: 0 },
      containers: { toFind: 4, found: 3, notFound: 0, notLookedFor: 1 },
    };
    expect(named(facts, 'drill')).toEqual(['containers not found']);
  });

  it('names each obstacle at most once, with as many as its kinds add up to, and leaves those without a reason', () => {
    const count = fc.nat({ max: 50 });
    const facts = fc.record({
      lots: fc.record({ affected: count, notAffected: count, undecided: count }),
      clients: fc.record({
        ...{ exposed: count, reached: count, refused: count, unreachable: count },
        ...{ triedInVain: count, notTried: count, erased: count },
      }),
      containers: fc.record({ toFind: count, found: count, notFound: count, notLookedFor: count }),
      remaining: fc.record({ containers: count, pieces: count, microlitres: count }),
      balance: fc.record({ lots: count, pieces: count, missingPieces: count, unexplainedPieces: count }),
    });
    fc.assert(
      fc.property(facts, fc.subarray([...closingObstacles]), (given, overridden) => {
        const all = obstaclesTo('recall', given);
        expect(new Set(all.map(({ obstacle }) => obstacle)).size).toBe(all.length);
        for (const { obstacle, count: whole, counts } of all) {
          expect(whole).toBeGreaterThan(0);
          if (obstacle === 'clients not told' || obstacle === 'containers not found') {
            expect(counts.reduce((sum, part) => sum + part.count, 0)).toBe(whole);
          }
        }
        const left = notOverridden(all, overridden);
        expect(left.length + all.filter(({ obstacle }) => overridden.includes(obstacle)).length).toBe(
          all.length,
        );
      }),
    );
  });
});
