import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CalendarEntry, nearestEntries } from './nearest-entries.js';

const today = '2026-06-15';

function entry(firstDay: string, lastDay = firstDay, key = firstDay): CalendarEntry {
  return {
    key,
    firstDay,
    lastDay,
    title: '',
    details: [],
    page: '',
    recordedAt: '2026-01-01T00:00:00Z',
    changes: 0,
  };
}

const days = ({ entries }: { entries: CalendarEntry[] }) => entries.map(({ firstDay }) => firstDay);

describe('the entries of a calendar', () => {
  it('stand in the order in which they begin', () => {
    const given = [entry('2026-07-01'), entry('2026-06-01'), entry('2026-06-20')];
    expect(nearestEntries(given, today, 3)).toMatchObject({ more: 0 });
    expect(days(nearestEntries(given, today, 3))).toEqual(['2026-06-01', '2026-06-20', '2026-07-01']);
  });

  it('keep what is to come before what is over, the nearest of each', () => {
    const given = ['2026-05-20', '2026-06-14', '2026-06-15', '2026-09-01', '2027-01-01'].map((day) =>
      entry(day),
    );
    expect(days(nearestEntries(given, today, 2))).toEqual(['2026-06-15', '2026-09-01']);
    expect(days(nearestEntries(given, today, 4))).toEqual([
      '2026-06-14',
      '2026-06-15',
      '2026-09-01',
      '2027-01-01',
    ]);
    expect(nearestEntries(given, today, 4).more).toBe(1);
  });

  it('count a window as to come until its last day is over', () => {
    const given = [entry('2026-05-01', '2026-06-15', 'open'), entry('2026-05-01', '2026-06-14', 'closed')];
    expect(nearestEntries(given, today, 1).entries.map(({ key }) => key)).toEqual(['open']);
  });

  it('lose none: what is not shown is counted', () => {
    const anyDay = fc.integer({ min: 1, max: 30 }).map((day) => `2026-06-${String(day).padStart(2, '0')}`);
    const anyEntry = fc.tuple(anyDay, anyDay, fc.uuid()).map(([one, other, key]) => {
      return one < other ? entry(one, other, key) : entry(other, one, key);
    });
    fc.assert(
      fc.property(fc.array(anyEntry), fc.nat({ max: 20 }), (given, most) => {
        const { entries, more } = nearestEntries(given, today, most);
        expect(entries.length + more).toBe(given.length);
        expect(entries.length).toBe(Math.min(most, given.length));
        const latestShown = entries.filter(({ lastDay }) => lastDay >= today).at(-1);
        const shown = new Set(entries);
        const hidden = given.filter((each) => !shown.has(each) && each.lastDay >= today);
        for (const { firstDay } of hidden) expect(firstDay >= (latestShown?.firstDay ?? '')).toBe(true);
      }),
    );
  });
});
