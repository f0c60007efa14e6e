import { describe, expect, it } from 'vitest';
import { type KitLineToCome, type KitSource, takenByKits } from './taken-by-kits.js';

const at = '2026-03-10T10:00:00.000Z';

function source(id: string, given: Partial<KitSource> = {}): KitSource {
  return {
    ...{ id, productId: 'umber', ownerId: null, countedInPieces: false, pieces: 1, recalled: false },
    ...{ useByLastDay: '2027-01-31', openedAt: null, openedLife: null, assumedOpenedLife: null },
    ...{ usableThrough: null, receivedOn: null, held: false, practice: false, finished: false },
    ...given,
  };
}

function line(sessionId: string, given: Partial<KitLineToCome> = {}): KitLineToCome {
  return { sessionId, artistId: 'ida', at, productIds: ['umber'], quantityPieces: 1, ...given };
}

const told = (lines: KitLineToCome[], sources: KitSource[]) =>
  takenByKits(lines, sources, 'Europe/Vienna').map(
    ({ line: { sessionId }, recalled, enoughElse, elseInDate }) => [
      sessionId,
      recalled.map(({ id }) => id).join(' '),
      enoughElse,
      elseInDate.map((other) => `${other.source.id} ${other.pieces}`).join(', '),
    ],
  );

describe('what kit lists would have taken of a recall', () => {
  it('is the recalled lot where it expires first, and what else is in date is named', () => {
    const sources = [source('bad', { recalled: true, useByLastDay: '2026-12-31' }), source('good')];
    expect(told([line('a'), line('b')], sources)).toEqual([
      ['a', 'bad', true, 'good 1'],
      ['b', 'bad', true, 'good 1'],
    ]);
  });

  it('is nothing where another lot would have been taken first', () => {
    expect(
      told([line('a')], [source('bad', { recalled: true }), source('good', { useByLastDay: '2026-12-31' })]),
    ).toEqual([]);
  });

  it('is nothing where the recalled lot could not have been used anyway', () => {
    const gone = [
      { useByLastDay: '2026-01-31' },
      { held: true },
      { finished: true },
      { practice: true },
      { pieces: 0 },
      { ownerId: 'nora' },
      { productId: 'sienna' },
    ].map((given, index) => source(`bad ${index}`, { recalled: true, ...given }));
    expect(told([line('a')], gone)).toEqual([]);
  });

  it('says when nothing else is enough, after what earlier sessions need of it', () => {
    const boxes = [
      source('bad', { recalled: true, countedInPieces: true, pieces: 10, useByLastDay: '2026-12-31' }),
      source('good', { countedInPieces: true, pieces: 3 }),
    ];
    const twoEach = ['a', 'b', 'c'].map((id) => line(id, { quantityPieces: 2 }));
    expect(told(twoEach, boxes)).toEqual([
      ['a', 'bad', true, 'good 3'],
      ['b', 'bad', false, 'good 1'],
      ['c', 'bad', false, ''],
    ]);
  });

  it('counts the pieces that other lots give first', () => {
    const boxes = [
      source('good', { countedInPieces: true, pieces: 3, useByLastDay: '2026-12-31' }),
      source('bad', { recalled: true, countedInPieces: true, pieces: 10 }),
    ];
    const twoEach = ['a', 'b'].map((id) => line(id, { quantityPieces: 2 }));
    expect(told(twoEach, boxes)).toEqual([['b', 'bad', false, 'good 1']]);
  });

  it('judges dates on the day of the session', () => {
    const sources = [source('bad', { recalled: true, useByLastDay: '2026-12-31' }), source('good')];
    expect(told([line('a', { at: '2027-01-20T10:00:00.000Z' })], sources)).toEqual([]);
  });
});
