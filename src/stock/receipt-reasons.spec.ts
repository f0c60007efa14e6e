import { describe, expect, it } from 'vitest';
import {
  isPastByItsOwnPrint,
  type JoinedLot,
  type LotReceiptReason,
  lotReasonsAtReceipt,
  lotReasonsOnJoining,
} from './receipt-reasons.js';

describe('what is put aside at receipt', () => {
  const sound = { codeState: 'printed', useBy: '2026-11-25' } as const;

  it('is nothing of a lot that is printed and in date, the last day included', () => {
    // Usable through the end of the day shown (ISO 15223-1:2021, 5.1.4 [S]).
    expect(lotReasonsAtReceipt(sound, '2026-11-25')).toEqual([]);
  });

  it('is a lot whose last day was yesterday', () => {
    expect(lotReasonsAtReceipt(sound, '2026-11-26')).toEqual(['already past']);
  });

  it('is a lot without code or date, for each reason apart', () => {
    expect(lotReasonsAtReceipt({ codeState: 'none printed', useBy: null }, '2026-11-25')).toEqual([
      'no lot printed',
      'no use-by printed',
    ]);
    expect(lotReasonsAtReceipt({ codeState: 'unreadable', useBy: '2026-01-31' }, '2026-11-25')).toEqual([
      'lot unreadable',
      'already past',
    ]);
  });
});

describe('what is put aside when goods join a lot', () => {
  const joining = (reason: LotReceiptReason, more: Partial<JoinedLot> = {}) =>
    lotReasonsOnJoining({ reasons: [reason], reasonsBefore: [reason], open: [], released: [], ...more });

  it('is the lot for what its label lacks, until a person decided', () => {
    const missing = 'no use-by printed';
    expect(joining(missing)).toEqual({ onLot: [missing], onArrivals: [] });
    expect(joining(missing, { open: [missing] })).toEqual({ onLot: [], onArrivals: [] });
    expect(joining(missing, { released: [missing] })).toEqual({ onLot: [], onArrivals: [] });
    expect(joining(missing, { released: ['doubt'] }).onLot).toEqual([missing]);
  });

  it('is what arrived when the date has passed, again and again', () => {
    const past = 'already past';
    expect(joining(past)).toEqual({ onLot: [], onArrivals: [past] });
    expect(joining(past, { released: [past] })).toEqual({ onLot: [], onArrivals: [past] });
    expect(joining(past, { open: [past] })).toEqual({ onLot: [], onArrivals: [] });
  });

  it('is the lot for what a correction of its date brings up, whatever was decided before', () => {
    for (const reason of ['no use-by printed', 'already past'] as const) {
      const corrected = { reasonsBefore: [], released: [reason] };
      expect(joining(reason, corrected)).toEqual({ onLot: [reason], onArrivals: [] });
    }
  });
});

describe('what joins a lot by the date on record', () => {
  it('is put aside when its own print is past, the last day excluded', () => {
    expect(isPastByItsOwnPrint('2026-11-20', [], '2026-11-25')).toBe(true);
    expect(isPastByItsOwnPrint('2026-11-25', [], '2026-11-25')).toBe(false);
    expect(isPastByItsOwnPrint(null, [], '2026-11-25')).toBe(false);
  });

  it('is not put aside a second time when the lot is past itself', () => {
    expect(isPastByItsOwnPrint('2026-11-20', ['already past'], '2026-11-25')).toBe(false);
  });
});
