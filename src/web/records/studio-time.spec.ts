import { describe, expect, it } from 'vitest';
import { shownInStudio, studioTime } from './studio-time.js';

// When clocks change in these places: the IANA time zone database [C].
describe('a time on the wall of the studio', () => {
  it('is one instant on an ordinary day, whatever the zone of the reader', () => {
    expect(studioTime('2026-03-02T14:30', 'Europe/Vienna')).toEqual({
      kind: 'once',
      instant: '2026-03-02T13:30:00.000Z',
    });
    expect(studioTime('2026-03-02T14:30', 'Pacific/Auckland')).toEqual({
      kind: 'once',
      instant: '2026-03-02T01:30:00.000Z',
    });
  });

  it('does not come in the hour that is skipped when the clocks are put forward', () => {
    expect(studioTime('2026-03-29T02:30', 'Europe/Vienna')).toEqual({ kind: 'never' });
    expect(studioTime('2026-03-08T02:00', 'America/New_York')).toEqual({ kind: 'never' });
    expect(studioTime('2026-03-29T03:00', 'Europe/Vienna')?.kind).toBe('once');
  });

  it('comes twice in the hour that is repeated when the clocks are put back', () => {
    expect(studioTime('2026-10-25T02:30', 'Europe/Vienna')).toEqual({
      kind: 'twice',
      first: { instant: '2026-10-25T00:30:00.000Z', offset: '+02:00' },
      second: { instant: '2026-10-25T01:30:00.000Z', offset: '+01:00' },
    });
    // By half an hour only.
    expect(studioTime('2026-04-05T01:45', 'Australia/Lord_Howe')?.kind).toBe('twice');
  });

  it('is nothing while it is being typed, or on a day that is none', () => {
    expect(studioTime('', 'Europe/Vienna')).toBeNull();
    expect(studioTime('2026-02-30T10:00', 'Europe/Vienna')).toBeNull();
  });

  it('is what the instant shows there again', () => {
    for (const local of ['2026-03-29T03:00', '2026-10-25T02:30', '2026-12-31T23:59']) {
      const time = studioTime(local, 'Europe/Vienna');
      const instants =
        time?.kind === 'twice'
          ? [time.first.instant, time.second.instant]
          : time?.kind === 'once'
            ? [time.instant]
            : [];
      expect(instants.length).toBeGreaterThan(0);
      for (const instant of instants) expect(shownInStudio(instant, 'Europe/Vienna')).toBe(local);
    }
  });
});
