import { describe, expect, it } from 'vitest';
import { emptyWhatIf, extraSessionsFaults, whatIfOf } from './what-if-draft.js';

describe('what is supposed to be different', () => {
  it('is nothing where nothing is written, or what is written changes nothing', () => {
    expect(whatIfOf(emptyWhatIf, [], undefined)).toBeUndefined();
    expect(whatIfOf({ ...emptyWhatIf, price: '0', leadTimeDays: ' ' }, [], undefined)).toBeUndefined();
    expect(whatIfOf(emptyWhatIf, [{ procedureId: 'b', on: '', sessions: '2' }], undefined)).toBeUndefined();
  });

  it('is asked in thousandths, more or less than all of it', () => {
    expect(
      whatIfOf({ target: '97,5', leadTimeDays: '-3', price: '10', bookings: '−20' }, [], undefined),
    ).toEqual({
      serviceTargetPerMille: 975,
      leadTimeExtraDays: -3,
      pricePerMille: 1100,
      bookingsPerMille: 800,
    });
  });

  it('tells what is missing of more sessions, a day before today included', () => {
    const whole = { procedureId: 'brows', on: '2026-12-01', sessions: '4' };
    expect(extraSessionsFaults(whole, '2026-12-01')).toEqual({});
    expect(extraSessionsFaults(whole, '2026-12-02')).toEqual({ on: true });
    expect(extraSessionsFaults({ procedureId: '', on: '', sessions: '0' }, '2026-12-01')).toEqual({
      ...{ procedureId: true, on: true, sessions: true },
    });
    expect(extraSessionsFaults({ ...whole, sessions: '1.5' }, '2026-12-01')).toEqual({ sessions: true });
  });

  it('may be of one item, with more sessions on a day', () => {
    const item = { kind: 'configuration', key: '1207RL universal' } as const;
    const extra = [{ procedureId: 'brows', on: '2026-12-01', sessions: '4' }];
    expect(whatIfOf({ ...emptyWhatIf, target: '0' }, extra, item)).toEqual({
      serviceTargetPerMille: 0,
      extraSessions: [{ procedureId: 'brows', on: '2026-12-01', sessions: 4 }],
      itemKind: 'configuration',
      itemKey: '1207RL universal',
    });
  });
});
