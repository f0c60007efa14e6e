import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchLot, type RecordedLot, sameCodeDecisions } from './lot-match.js';

const recorded = (lotId: string, code: string | null, useBy: string | null): RecordedLot => ({
  lotId,
  code,
  useBy,
});

describe('the lot of received goods', () => {
  const march = recorded('march', 'L-1', '2027-03-31');

  it('is the one of the same code and use-by date', () => {
    const lots = [recorded('other', 'L-2', '2027-03-31'), march];
    expect(matchLot({ code: 'L-1', useBy: '2027-03-31' }, lots, undefined)).toEqual({
      kind: 'joins',
      lotId: 'march',
    });
  });

  it('is a new one for a code that is not on record, also when it differs only in case', () => {
    expect(matchLot({ code: 'l-1', useBy: '2027-03-31' }, [march], undefined)).toEqual({ kind: 'new lot' });
  });

  it('is never shared by goods whose code cannot be read', () => {
    const unknown = recorded('unknown', null, '2027-03-31');
    for (const decision of [undefined, ...sameCodeDecisions]) {
      expect(matchLot({ code: null, useBy: '2027-03-31' }, [unknown], decision)).toEqual({ kind: 'new lot' });
    }
  });

  it('is a question when the code is on record with another date', () => {
    expect(matchLot({ code: 'L-1', useBy: '2028-03-31' }, [march], undefined)).toEqual({
      kind: 'question',
      recorded: [march],
      choices: ['separate lot', 'keep recorded date', 'correct recorded date'],
    });
  });

  it('is a question when the code is on record with a date and now has none, and the other way round', () => {
    expect(matchLot({ code: 'L-1', useBy: null }, [march], undefined).kind).toBe('question');
    const undated = recorded('undated', 'L-1', null);
    expect(matchLot({ code: 'L-1', useBy: '2027-03-31' }, [undated], undefined).kind).toBe('question');
  });

  it('follows the decision', () => {
    const given = { code: 'L-1', useBy: '2028-03-31' };
    expect(matchLot(given, [march], 'separate lot')).toEqual({ kind: 'new lot' });
    expect(matchLot(given, [march], 'keep recorded date')).toEqual({ kind: 'joins', lotId: 'march' });
    expect(matchLot(given, [march], 'correct recorded date')).toEqual({ kind: 'corrects', lotId: 'march' });
  });

  it('keeps asking when several lots bear the code and one date is to be kept or corrected', () => {
    const lots = [march, recorded('april', 'L-1', '2027-04-30')];
    const match = matchLot({ code: 'L-1', useBy: '2028-03-31' }, lots, 'correct recorded date');
    expect(match).toEqual({ kind: 'question', recorded: lots, choices: ['separate lot'] });
  });

  it('ignores a decision where there is nothing to decide', () => {
    const given = { code: 'L-1', useBy: '2027-03-31' };
    for (const decision of sameCodeDecisions) {
      expect(matchLot(given, [march], decision)).toEqual({ kind: 'joins', lotId: 'march' });
    }
  });

  it('never joins a lot of another code, and never makes a second of the same code and date', () => {
    const code = fc.option(fc.constantFrom('A', 'B'), { nil: null });
    const useBy = fc.option(fc.constantFrom('2027-01-31', '2027-02-28'), { nil: null });
    const lots = fc.uniqueArray(fc.record({ lotId: fc.uuid(), code, useBy }), {
      selector: (lot) => (lot.code === null ? lot.lotId : `${lot.code} ${lot.useBy}`),
      maxLength: 5,
    });
    const decision = fc.option(fc.constantFrom(...sameCodeDecisions), { nil: undefined });
    fc.assert(
      fc.property(fc.record({ code, useBy }), lots, decision, (given, known, decided) => {
        const match = matchLot(given, known, decided);
        const same = known.find(
          (lot) => given.code !== null && lot.code === given.code && lot.useBy === given.useBy,
        );
        if (same) expect(match).toEqual({ kind: 'joins', lotId: same.lotId });
        if ('lotId' in match) {
          expect(known.find((lot) => lot.lotId === match.lotId)?.code).toBe(given.code);
          expect(given.code).not.toBeNull();
        }
        if (match.kind === 'new lot') expect(same).toBeUndefined();
      }),
    );
  });
});
