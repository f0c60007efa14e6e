import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { readWrittenDayOrTime, readWrittenTime, startOfDay } from './written-time.js';

const vienna = 'Europe/Vienna';

describe('a time in a file', () => {
  it('is by the clocks of the studio, or by its offset', () => {
    expect(readWrittenTime('2026-04-03 14:30', vienna)).toEqual({ instant: '2026-04-03T12:30:00.000Z' });
    expect(readWrittenTime('2026-01-03T9:05', vienna)).toEqual({ instant: '2026-01-03T08:05:00.000Z' });
    expect(readWrittenTime('2026-04-03 14:30Z', vienna)).toEqual({ instant: '2026-04-03T14:30:00.000Z' });
    expect(readWrittenTime('2026-04-03T14:30:15-05:00', vienna)).toEqual({
      instant: '2026-04-03T19:30:15.000Z',
    });
  });

  // Europe/Vienna: clocks go from 02:00 to 03:00 on 2026-03-29 and from 03:00 to 02:00 on 2026-10-25 [M].
  it('that the clocks skip is a fault', () => {
    expect(readWrittenTime('2026-03-29 02:30', vienna)).toEqual({
      fault:
        '2026-03-29 02:30 does not come that night, since the clocks of Europe/Vienna are put forward; write another time',
    });
    expect(readWrittenTime('2026-03-29 03:00', vienna)).toEqual({ instant: '2026-03-29T01:00:00.000Z' });
  });

  it('that the clocks show twice is a fault that says how to write each', () => {
    const read = readWrittenTime('2026-10-25 02:30', vienna);
    expect(read).toMatchObject({
      fault: expect.stringContaining('2026-10-25 02:30+02:00 or 2026-10-25 02:30+01:00'),
    });
    expect(readWrittenTime('2026-10-25 02:30+02:00', vienna)).toEqual({
      instant: '2026-10-25T00:30:00.000Z',
    });
    expect(readWrittenTime('2026-10-25 02:30+01:00', vienna)).toEqual({
      instant: '2026-10-25T01:30:00.000Z',
    });
  });

  it('without a time of day, or with one that does not exist, is a fault', () => {
    expect(readWrittenTime('2026-04-03', vienna)).toMatchObject({
      fault: expect.stringContaining('no time of day'),
    });
    expect(readWrittenTime('2026-04-03 24:30', vienna)).toMatchObject({
      fault: expect.stringContaining('hours'),
    });
    expect(readWrittenTime('03/04/2026 14:30', vienna)).toMatchObject({
      fault: expect.stringContaining('two ways'),
    });
    expect(readWrittenTime('03/04/2026 2:30 PM', vienna)).toMatchObject({
      fault: expect.stringContaining('two ways'),
    });
    expect(readWrittenTime('tomorrow', vienna)).toMatchObject({
      fault: expect.stringContaining('not a time'),
    });
  });

  it('may be a day alone where that is enough', () => {
    expect(readWrittenDayOrTime('2026-04-03', vienna)).toEqual({ instant: '2026-04-02T22:00:00.000Z' });
    // Clocks in Beirut went forward at midnight on 2025-03-30 [M], so that day began at 01:00.
    expect(startOfDay('2025-03-30', 'Asia/Beirut')).toBe('2025-03-29T22:00:00.000Z');
  });

  it('is the same as a second calendar says, all around the year', () => {
    const day = fc.integer({ min: 0, max: 364 });
    fc.assert(
      fc.property(day, fc.integer({ min: 0, max: 95 }), (offset, quarter) => {
        const local = DateTime.fromISO('2026-01-01', { zone: 'utc' }).plus({
          days: offset,
          minutes: quarter * 15,
        });
        const written = local.toFormat('yyyy-MM-dd HH:mm');
        const other = DateTime.fromFormat(written, 'yyyy-MM-dd HH:mm', { zone: vienna });
        const read = readWrittenTime(written, vienna);
        if ('instant' in read) expect(read.instant).toBe(other.toUTC().toISO());
        else expect(other.hour === 2 || other.hour === 3).toBe(true);
      }),
    );
  });
});
