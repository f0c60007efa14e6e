import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ContainerCandidate, earlierExpiring, orderFirstExpired } from './first-expired.js';
import { judgeShelfLife } from './shelf-life.js';

const at = '2026-06-15T10:00:00Z';
const timeZone = 'Europe/Berlin';

function container(id: string, facts: Partial<ContainerCandidate> = {}): ContainerCandidate {
  return {
    id,
    useByLastDay: '2027-12-31',
    openedAt: null,
    openedLife: 'P12M',
    assumedOpenedLife: null,
    usableThrough: null,
    receivedOn: '2026-01-10',
    held: false,
    practice: false,
    finished: false,
    ...facts,
  };
}

function idsInOrder(...candidates: ContainerCandidate[]): string[] {
  return orderFirstExpired(candidates, at, timeZone).order.map((candidate) => candidate.id);
}

describe('first expired, first out', () => {
  it('takes what is open before what is sealed, even when the sealed one expires sooner', () => {
    const open = container('open', { openedAt: '2026-06-01T10:00:00Z' });
    const sealed = container('sealed', { useByLastDay: '2026-07-31' });
    expect(idsInOrder(sealed, open)).toEqual(['open', 'sealed']);
  });

  it('takes the earliest last usable day first, of opened ones by their opened life', () => {
    const young = container('young', { openedAt: '2026-06-01T10:00:00Z', useByLastDay: '2026-12-31' });
    const old = container('old', { openedAt: '2025-07-01T10:00:00Z' });
    const soon = container('soon', { useByLastDay: '2026-08-31' });
    expect(idsInOrder(container('late'), soon, young, old)).toEqual(['old', 'young', 'soon', 'late']);
  });

  it('takes the earlier received of two that expire together, then the lower id', () => {
    const later = container('a', { receivedOn: '2026-02-01' });
    expect(idsInOrder(later, container('c'), container('b'))).toEqual(['b', 'c', 'a']);
  });

  it('takes an unknown day of receipt after the known ones', () => {
    expect(idsInOrder(container('a', { receivedOn: null }), container('b'))).toEqual(['b', 'a']);
  });

  it('takes a life that ends at an hour before one that runs to the end of the same day', () => {
    const openedAt = '2026-06-14T12:00:00Z';
    const wholeDay = container('day', { openedAt, openedLife: 'P2D' });
    const atNoon = container('noon', { openedAt, openedLife: 'PT48H' });
    const before = container('before', { openedAt: '2026-06-14T11:59:59.500Z', openedLife: 'PT48H' });
    expect(idsInOrder(wholeDay, atNoon, before)).toEqual(['before', 'noon', 'day']);
  });

  it('takes what has no known date last', () => {
    const undated = container('undated', { useByLastDay: null });
    expect(idsInOrder(undated, container('dated', { receivedOn: '2026-06-01' }))).toEqual([
      'dated',
      'undated',
    ]);
  });

  it('takes an opened one without a known date after the sealed dated ones', () => {
    const opened = { openedAt: '2026-06-01T10:00:00Z', useByLastDay: null, openedLife: null };
    expect(idsInOrder(container('undated', opened), container('sealed'))).toEqual(['sealed', 'undated']);
  });

  it.each([
    ['held', { held: true }],
    ['expired', { useByLastDay: '2026-06-14' }],
    ['open too long', { openedAt: '2025-06-14T10:00:00Z' }],
    ['practice stock', { practice: true }],
    ['finished', { finished: true }],
  ] as const)('leaves out what is %s and says so', (reason, facts) => {
    const left = container('left out', facts);
    const result = orderFirstExpired([left, container('fine')], at, timeZone);
    expect(result.order.map((candidate) => candidate.id)).toEqual(['fine']);
    expect(result.excluded).toEqual([{ candidate: left, reasons: [reason] }]);
  });

  it('names every reason for leaving one out', () => {
    const left = container('left out', {
      held: true,
      useByLastDay: '2026-06-14',
      practice: true,
      finished: true,
    });
    expect(orderFirstExpired([left], at, timeZone).excluded).toEqual([
      { candidate: left, reasons: ['held', 'expired', 'practice stock', 'finished'] },
    ]);
  });
});

describe('what expires earlier than the one picked', () => {
  it('is named in the order to take it', () => {
    const first = container('first', { useByLastDay: '2026-07-31' });
    const second = container('second', { useByLastDay: '2026-08-31' });
    const picked = container('picked');
    expect(earlierExpiring([picked, second, first], picked, at, timeZone)).toEqual([first, second]);
  });

  it('does not count what expires on the same day, whenever it was received', () => {
    const picked = container('picked', { receivedOn: '2026-03-01' });
    expect(earlierExpiring([container('older')], picked, at, timeZone)).toEqual([]);
  });

  it('does not count a sealed one against an opened one', () => {
    const picked = container('picked', { openedAt: '2026-06-01T10:00:00Z' });
    const sealed = container('sealed', { useByLastDay: '2026-07-31' });
    const open = container('open', { openedAt: '2025-07-01T10:00:00Z' });
    expect(earlierExpiring([sealed, open, picked], picked, at, timeZone)).toEqual([open]);
  });

  it('does not count one that may not be used', () => {
    const held = container('held', { useByLastDay: '2026-07-31', held: true });
    expect(earlierExpiring([held], container('picked'), at, timeZone)).toEqual([]);
  });

  it('is every dated one when the one picked has no known date', () => {
    const picked = container('picked', {
      openedAt: '2026-06-01T10:00:00Z',
      useByLastDay: null,
      openedLife: null,
    });
    const dated = container('dated');
    const undated = container('undated', { useByLastDay: null });
    expect(earlierExpiring([dated, undated, picked], picked, at, timeZone)).toEqual([dated]);
  });
});

const day = fc.constantFrom('2026-06-14', '2026-06-15', '2026-07-31', '2027-12-31', null);
const candidate = fc.record({
  useByLastDay: day,
  openedAt: fc.constantFrom('2025-06-14T10:00:00Z', '2026-06-14T10:00:00Z', '2026-06-15T09:00:00Z', null),
  openedLife: fc.constantFrom('P12M', 'P30D', 'PT24H', 'PT48H', null),
  assumedOpenedLife: fc.constantFrom('P6M', null),
  usableThrough: fc.constantFrom('2026-06-15', null),
  receivedOn: fc.constantFrom('2026-01-01', '2026-02-01', null),
  held: fc.boolean(),
  practice: fc.boolean(),
  finished: fc.boolean(),
});
const shelf = fc
  .array(candidate, { maxLength: 12 })
  .map((all) => all.map((facts, index) => ({ ...facts, id: `c${String(index).padStart(2, '0')}` })));

describe('first expired, first out on any shelf', () => {
  it('loses and invents nothing, and orders the usable ones whatever order they came in', () => {
    fc.assert(
      fc.property(
        shelf.chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))),
        ([all, shuffled]) => {
          const result = orderFirstExpired(all, at, timeZone);
          expect(result.order.length + result.excluded.length).toBe(all.length);
          expect(orderFirstExpired(shuffled, at, timeZone).order).toEqual(result.order);
        },
      ),
    );
  });

  it('orders only what may be used, and says why the rest is left out', () => {
    fc.assert(
      fc.property(shelf, (all) => {
        const { order, excluded } = orderFirstExpired(all, at, timeZone);
        for (const one of order) {
          expect(one.held || one.practice || one.finished).toBe(false);
          expect(['usable', 'no date known']).toContain(judgeShelfLife(one, at, timeZone).status);
        }
        expect(excluded.every((one) => one.reasons.length > 0)).toBe(true);
      }),
    );
  });

  it('has nothing to say against the first', () => {
    fc.assert(
      fc.property(shelf, (all) => {
        const [first] = orderFirstExpired(all, at, timeZone).order;
        if (first) expect(earlierExpiring(all, first, at, timeZone)).toEqual([]);
      }),
    );
  });
});
