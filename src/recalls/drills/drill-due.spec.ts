import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { drillDue, nextDrillOn } from './drill-due.js';

describe('a drill', () => {
  it.each([
    ['2026-03-30', null],
    ['2026-03-31', 'notice'],
    ['2026-04-29', 'notice'],
    ['2026-04-30', 'warning'],
    ['2027-01-01', 'warning'],
  ])('that is due on the last of March is on %s: %s', (day, severity) => {
    expect(drillDue({ nextOn: '2026-03-31' }, day)?.severity ?? null).toBe(severity);
  });

  it('that nobody asks for is never due', () => {
    expect(drillDue({ nextOn: null }, '2026-03-31')).toBeNull();
  });

  it('that was closed moves the next one so many months on, to the last day of a shorter month', () => {
    expect(nextDrillOn({ everyMonths: 6, nextOn: '2026-02-01' }, '2026-08-31')).toBe('2027-02-28');
  });

  it('that was closed early never brings the next one forward', () => {
    expect(nextDrillOn({ everyMonths: 1, nextOn: '2026-12-01' }, '2026-03-01')).toBe('2026-12-01');
  });

  it('that was asked for once is done with when it was closed in time or late, not before', () => {
    expect(nextDrillOn({ everyMonths: null, nextOn: '2026-03-01' }, '2026-03-01')).toBeNull();
    expect(nextDrillOn({ everyMonths: null, nextOn: '2026-03-01' }, '2026-02-28')).toBe('2026-03-01');
  });

  it('is never due any more on the day on which one was closed', () => {
    const day = fc
      .integer({ min: 0, max: 20_000 })
      .map((days) => Temporal.PlainDate.from('2000-01-01').add({ days }).toString());
    fc.assert(
      fc.property(day, day, fc.integer({ min: 1, max: 60 }), (nextOn, closedOn, everyMonths) => {
        fc.pre(closedOn >= nextOn);
        expect(drillDue({ nextOn: nextDrillOn({ everyMonths, nextOn }, closedOn) }, closedOn)).toBeNull();
      }),
    );
  });
});
