import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { type TimeBarFacts, timeBar } from './time-bar.js';

const opened: TimeBarFacts = {
  receivedOn: '2026-01-10',
  openedOn: '2026-03-01',
  openedLifeLastDay: '2026-09-01',
  useBy: '2026-10-15',
  today: '2026-06-01',
};
const kinds = (facts: TimeBarFacts) => timeBar(facts).marks.map(({ kind }) => kind);

describe('the time bar', () => {
  it('puts the days of an opened bottle in their order', () => {
    expect(kinds(opened)).toEqual(['received', 'opened', 'today', 'opened life', 'use-by']);
  });

  it('ends with the opened life, or with the use-by when that is earlier', () => {
    expect(timeBar(opened).end).toMatchObject({ kind: 'opened life', day: '2026-09-01' });
    expect(timeBar({ ...opened, useBy: '2026-08-31' }).end).toMatchObject({
      kind: 'use-by',
      day: '2026-08-31',
    });
    expect(timeBar({ ...opened, useBy: '2026-09-01' }).end?.kind).toBe('opened life');
  });

  it('points at a use-by that is years away instead of squeezing the rest', () => {
    const { marks, end } = timeBar({ ...opened, useBy: '2099-12-31' });
    expect(marks.at(-1)).toMatchObject({ kind: 'use-by', at: 1, isBeyond: true });
    expect(end?.at).toBeGreaterThan(0.9);
    expect(end?.isBeyond).toBe(false);
  });

  it('may be used through the end of its last day and is past on the next', () => {
    expect(timeBar({ ...opened, today: '2026-09-01' })).toMatchObject({ isPast: false, over: null });
    const past = timeBar({ ...opened, today: '2026-09-02' });
    expect(past).toMatchObject({ isPast: true, left: null });
    expect(past.over?.from).toBe(past.end?.at);
  });

  it('has no end where no date is known', () => {
    const bar = timeBar({ ...opened, openedLifeLastDay: null, useBy: null });
    expect(bar).toMatchObject({ end: null, isPast: false, left: null, over: null });
  });

  it('came past its end: nothing of its time went by here', () => {
    expect(
      timeBar({ ...opened, openedOn: null, openedLifeLastDay: null, useBy: '2020-01-31' }),
    ).toMatchObject({
      isPast: true,
      gone: null,
    });
  });

  const day = fc
    .integer({ min: 0, max: 40_000 })
    .map((days) => Temporal.PlainDate.from('1995-01-01').add({ days }).toString());
  const facts = fc.record({
    receivedOn: day,
    openedOn: fc.option(day),
    openedLifeLastDay: fc.option(day),
    useBy: fc.option(day),
    today: day,
  });

  it('keeps every mark within the bar, in the order of the days, and ends at the limit that comes first', () => {
    fc.assert(
      fc.property(facts, (given) => {
        const { marks, end, isPast, gone, left, over } = timeBar(given);
        for (const { at } of marks) expect(at >= 0 && at <= 1).toBe(true);
        for (const [index, mark] of marks.entries()) {
          const next = marks[index + 1];
          if (!next) continue;
          expect(mark.at).toBeLessThanOrEqual(next.at);
          expect(mark.day <= next.day).toBe(true);
        }
        const limits = [given.openedLifeLastDay, given.useBy].filter((one) => one !== null).sort();
        expect(end?.day).toBe(limits[0]);
        expect(end?.isBeyond ?? false).toBe(false);
        expect(isPast).toBe(limits[0] !== undefined && limits[0] < given.today);
        for (const stretch of [gone, left, over]) {
          if (stretch) expect(stretch.from).toBeLessThanOrEqual(stretch.to);
        }
        expect(left !== null).toBe(end !== null && !isPast);
        // What went by and what follows it touch and do not overlap.
        if (gone && (left ?? over)) expect(gone.to).toBe((left ?? over)?.from);
      }),
    );
  });
});
