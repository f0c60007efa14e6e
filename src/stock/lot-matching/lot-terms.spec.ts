import { describe, expect, it } from 'vitest';
import type { LotFacts } from './lot-facts.js';
import type { LotTerm } from './lot-scope.js';
import { lotTermsMatcher } from './lot-terms.js';

const lot: LotFacts = {
  lotId: 'l1',
  productId: 'p1',
  makerName: 'Nordlys Pigment',
  productName: 'Brow Colour',
  shade: null,
  gtins: [],
  codes: [{ kind: 'lot', code: 'L1005', superseded: false }],
  codeState: 'printed',
  useBy: '2027-10-31',
  useByPrecision: 'month',
  manufacturedOn: null,
};
const code = (text: string): LotTerm => ({ kind: 'code', code: text, useBy: null });
const match = (lots: LotTerm[], facts: Partial<LotFacts> = {}, openEnded = false) =>
  lotTermsMatcher({ lots, openEnded })({ ...lot, ...facts });

describe('the lots that an item names', () => {
  it('are told apart by an equal code also where something else says more', () => {
    const { grade, reasons, byCode } = match([{ kind: 'all lots' }, code('L1005')]);
    expect(grade).toBe('certain');
    expect(reasons.map((reason) => reason.code)).toEqual(['all lots named']);
    expect(byCode?.code).toBe('code equal');
    expect(match([{ kind: 'code range', from: 'L1001', through: 'L1009', useBy: null }]).byCode?.code).toBe(
      'code in range',
    );
  });

  it('are not by a code that is only like it, or was corrected since', () => {
    expect(match([code('L1006')]).byCode).toBeNull();
    expect(match([code('L-1005')]).byCode).toBeNull();
    const codes = [
      { kind: 'lot' as const, code: 'L1005', superseded: true },
      { kind: 'lot' as const, code: 'X77', superseded: false },
    ];
    expect(match([code('L1005')], { codes })).toMatchObject({ grade: 'possible', byCode: null });
  });

  it('say the strongest of several reasons', () => {
    const codesOf = (terms: LotTerm[], openEnded: boolean) =>
      match(terms, {}, openEnded).reasons.map((reason) => reason.code);
    expect(codesOf([code('L1006'), code('L-1005')], true)).toEqual(['other spacing']);
    expect(codesOf([code('L1006')], true)).toEqual(['slip']);
    expect(codesOf([code('Q9999')], true)).toEqual(['open-ended']);
    expect(codesOf([], true)).toEqual(['open-ended']);
    expect(codesOf([], false)).toEqual(['no lots named']);
    expect(codesOf([code('Q9999')], false)).toEqual(['lot not named']);
  });

  it('find a code among thousands, and what is one slip from it', () => {
    const matcher = lotTermsMatcher({
      lots: Array.from({ length: 5_000 }, (_, index) => code(`N${String(index * 20).padStart(6, '0')}`)),
      openEnded: false,
    });
    const graded = (text: string) =>
      matcher({ ...lot, codes: [{ kind: 'lot', code: text, superseded: false }] });
    expect(graded('N099980').grade).toBe('certain');
    expect(graded('N99980').reasons[0]?.facts).toEqual({ named: 'N099980', recorded: 'N99980' });
    expect(graded('N100055').grade).toBe('not');
  });
});
