import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mixAtTouchUp, type PartOfMix, touchUpExpectedBy, touchUpWindow } from './touch-up-window.js';

const timeZone = 'Europe/Berlin';
const window = { opensOn: '2026-03-31', closesOn: '2026-04-10' };

function component(facts: Partial<PartOfMix> = {}): PartOfMix {
  return {
    lotId: 'lot',
    containerId: 'bottle',
    label: 'Warm brown',
    useByLastDay: '2027-12-31',
    openedAt: '2026-03-01T10:00:00Z',
    openedLife: 'P12M',
    assumedOpenedLife: null,
    usableThrough: null,
    held: false,
    practice: false,
    finished: false,
    ...facts,
  };
}

function at(facts: Partial<PartOfMix>) {
  return mixAtTouchUp([component(facts)], window, timeZone)[0];
}

describe('a touch-up window', () => {
  it('opens 30 and closes 40 days after the session unless the procedure says otherwise', () => {
    // One common rule; others say 4–8 or 6–8 weeks [S].
    expect(touchUpWindow('2026-03-01')).toEqual({ opensOn: '2026-03-31', closesOn: '2026-04-10' });
    expect(touchUpWindow('2026-03-01', { fromDays: 42, toDays: 56 })).toEqual({
      opensOn: '2026-04-12',
      closesOn: '2026-04-26',
    });
  });

  it('counts through a leap day and a turn of the year', () => {
    expect(touchUpWindow('2028-01-30').opensOn).toBe('2028-02-29');
    expect(touchUpWindow('2027-01-30').opensOn).toBe('2027-03-01');
    expect(touchUpWindow('2026-12-05').opensOn).toBe('2027-01-04');
  });

  it('may be a single day, and the day of the session itself', () => {
    expect(touchUpWindow('2026-03-01', { fromDays: 0, toDays: 0 })).toEqual({
      opensOn: '2026-03-01',
      closesOn: '2026-03-01',
    });
  });

  it.each([
    ['first session', '2026-04-10'],
    ['correction', '2026-04-10'],
    ['patch test', null],
    ['touch-up', null],
    ['refresh', null],
    ['lightening', null],
    ['training', null],
  ] as const)('closes after a %s on %s', (visitKind, closesOn) => {
    expect(touchUpExpectedBy(visitKind, '2026-03-01', { fromDays: 30, toDays: 40 })).toBe(closesOn);
  });

  it.each([
    [40, 30],
    [-1, 30],
    [1.5, 30],
    [30, 3651],
    [Number.NaN, 30],
  ])('refuses a window from %d to %d days', (fromDays, toDays) => {
    expect(() => touchUpWindow('2026-03-01', { fromDays, toDays })).toThrow(/setting of the procedure/);
  });

  it('may lie as far off as ten years of days', () => {
    expect(touchUpWindow('2026-03-01', { fromDays: 3650, toDays: 3650 }).closesOn).toBe('2036-02-27');
  });

  it('refuses a day that is not in the calendar', () => {
    expect(() => touchUpWindow('2026-02-30')).toThrow(RangeError);
  });
});

describe('the mix of the first session at the touch-up', () => {
  it('is usable on both ends when all of it lasts', () => {
    expect(at({})).toEqual({
      lotId: 'lot',
      containerId: 'bottle',
      label: 'Warm brown',
      usableAtStart: 'yes',
      usableAtEnd: 'yes',
      lastDay: '2027-03-01',
      openedLifeFrom: 'label',
      whyNot: [],
    });
  });

  it('is usable through the end of a last day that is the first or last of the window', () => {
    expect(at({ useByLastDay: '2026-03-31' })).toMatchObject({ usableAtStart: 'yes', usableAtEnd: 'no' });
    expect(at({ useByLastDay: '2026-04-10' })).toMatchObject({ usableAtEnd: 'yes', whyNot: [] });
    expect(at({ useByLastDay: '2026-03-30' })).toMatchObject({ usableAtStart: 'no', usableAtEnd: 'no' });
  });

  it('says when a bottle expires within the window, and what to do', () => {
    const result = at({ useByLastDay: '2026-04-05' });
    expect(result).toMatchObject({ usableAtStart: 'yes', usableAtEnd: 'no', lastDay: '2026-04-05' });
    expect(result?.whyNot).toHaveLength(1);
    expect(result?.whyNot[0]).toMatchObject({ obstacle: 'expired' });
    expect(result?.whyNot[0]?.message).toMatch(/Warm brown: .*2026-04-05.* plan another/);
  });

  it('says when a bottle will have been open too long, and whose opened life that is', () => {
    expect(at({ openedLife: null, assumedOpenedLife: 'P35D' })).toMatchObject({
      usableAtStart: 'yes',
      usableAtEnd: 'no',
      lastDay: '2026-04-05',
      openedLifeFrom: 'assumed',
      whyNot: [{ obstacle: 'open too long' }],
    });
  });

  it('does not count on a life in hours that ends within the day', () => {
    // Ends on 31 March at noon in Berlin: too early for a touch-up in the afternoon.
    expect(at({ openedAt: '2026-03-29T10:00:00Z', openedLife: 'PT48H' })).toMatchObject({
      lastDay: '2026-03-31',
      usableAtStart: 'no',
    });
  });

  it('is not usable while held or once used up, whatever the dates', () => {
    expect(at({ held: true })).toMatchObject({
      usableAtStart: 'no',
      usableAtEnd: 'no',
      whyNot: [{ obstacle: 'held' }],
    });
    expect(at({ practice: true })).toMatchObject({
      usableAtStart: 'no',
      usableAtEnd: 'no',
      whyNot: [{ obstacle: 'practice only' }],
    });
    expect(at({ finished: true })).toMatchObject({ usableAtStart: 'no', whyNot: [{ obstacle: 'finished' }] });
    expect(
      at({ held: true, finished: true, useByLastDay: '2026-01-01' })?.whyNot.map((one) => one.obstacle),
    ).toEqual(['held', 'expired', 'finished']);
  });

  it('does not call an unknown date usable', () => {
    expect(at({ useByLastDay: null, openedLife: null })).toMatchObject({
      usableAtStart: 'no date known',
      usableAtEnd: 'no date known',
      lastDay: null,
    });
  });

  it('answers for every part in the order of the mix', () => {
    const parts = [component({ lotId: 'one' }), component({ lotId: 'two', held: true })];
    expect(mixAtTouchUp(parts, window, timeZone).map((part) => [part.lotId, part.usableAtEnd])).toEqual([
      ['one', 'yes'],
      ['two', 'no'],
    ]);
  });

  it('is never usable at the end without being usable at the start', () => {
    const day = fc
      .integer({ min: 0, max: 60 })
      .map((days) => touchUpWindow('2026-03-01', { fromDays: days, toDays: days }));
    fc.assert(
      fc.property(
        fc.option(day.map((one) => one.opensOn)),
        fc.constantFrom('P1M', 'P35D', 'P10D', 'PT800H', null),
        fc.boolean(),
        (useByLastDay, openedLife, held) => {
          const result = at({ useByLastDay, openedLife, held });
          if (result?.usableAtEnd === 'yes') expect(result.usableAtStart).toBe('yes');
          expect(result?.usableAtEnd === 'no').toBe((result?.whyNot.length ?? 0) > 0);
        },
      ),
    );
  });
});
