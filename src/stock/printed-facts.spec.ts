import { describe, expect, it } from 'vitest';
import { printedFacts, type SaidOfPackage, type SymbolOfPackage } from './printed-facts.js';

const day = '2026-11-25';
const said: SaidOfPackage = { codes: [{ kind: 'lot', code: 'L-1' }], useBy: '2028-06-30' };
const symbol: SymbolOfPackage = {
  lotCode: 'L-1',
  useBy: { date: '2028-06-30', precision: 'month' },
  producedOn: { date: '2026-01-15' },
};

function factsOf(given: SaidOfPackage, scanned: SymbolOfPackage = {}) {
  const decided = printedFacts(given, scanned, day);
  if ('faults' in decided) throw new Error(decided.faults.map(({ message }) => message).join('; '));
  return decided.facts;
}

function faultsOf(given: SaidOfPackage, scanned: SymbolOfPackage = {}): [string, string][] {
  const decided = printedFacts(given, scanned, day);
  return 'faults' in decided ? decided.faults.map(({ field, message }) => [field, message]) : [];
}

describe('what is printed on received goods', () => {
  it('comes from the symbol alone when nothing is said', () => {
    expect(factsOf({}, symbol)).toEqual({
      code: 'L-1',
      codeState: 'printed',
      codes: [{ kind: 'lot', code: 'L-1' }],
      useBy: '2028-06-30',
      useByPrecision: 'month',
      manufacturedOn: '2026-01-15',
    });
  });

  it('comes from what is said when there is no symbol, a month standing for its last day', () => {
    expect(factsOf({ ...said, useBy: '2028-02' })).toMatchObject({
      useBy: '2028-02-29',
      useByPrecision: 'month',
      manufacturedOn: null,
    });
  });

  it('agrees when both say the same, keeping how the label states the date', () => {
    expect(factsOf({ ...said, manufacturedOn: '2026-01-15' }, symbol).useByPrecision).toBe('day');
  });

  it('is known by its lot code, and keeps batch codes beside it', () => {
    const codes = [
      { kind: 'other', code: 'X' },
      { kind: 'batch', code: 'B-9' },
      { kind: 'lot', code: 'L-1' },
    ] as const;
    expect(factsOf({ ...said, codes }).codes.map(({ code }) => code)).toEqual(['L-1', 'B-9', 'X']);
    expect(factsOf({ ...said, codes }).code).toBe('L-1');
    expect(factsOf({ ...said, codes: [{ kind: 'batch', code: 'B-9' }] }).code).toBe('B-9');
    expect(factsOf({ codes: [{ kind: 'batch', code: 'B-9' }] }, symbol).codes).toHaveLength(2);
  });

  it.each<[string, SaidOfPackage, string, RegExp]>([
    ['lot', { codes: [{ kind: 'lot', code: 'L-2' }] }, 'codes', /L-1.*L-2/],
    ['lack of a lot', { codeState: 'none printed' }, 'codeState', /none printed.*L-1/],
    ['use-by date', { useBy: '2028-05-31' }, 'useBy', /2028-06-30.*2028-05-31/],
    ['lack of a date', { useBy: null }, 'useBy', /2028-06-30/],
    ['production date', { manufacturedOn: '2026-01-16' }, 'manufacturedOn', /2026-01-15.*2026-01-16/],
  ])('names both when symbol and person disagree on the %s', (_, given, field, message) => {
    expect(faultsOf(given, symbol)).toEqual([[field, expect.stringMatching(message)]]);
  });

  it('is never guessed: nothing said and nothing scanned is a fault', () => {
    expect(faultsOf({}).map(([field]) => field)).toEqual(['codes', 'useBy']);
    expect(faultsOf({ ...said, codes: [] }).map(([field]) => field)).toEqual(['codes']);
  });

  it('is taken as missing only when that is said', () => {
    expect(factsOf({ codeState: 'unreadable', useBy: null })).toMatchObject({
      code: null,
      codes: [],
      codeState: 'unreadable',
      useBy: null,
      useByPrecision: 'none printed',
    });
  });

  it('cannot be codes and no codes at once', () => {
    expect(faultsOf({ ...said, codeState: 'unreadable' }).map(([field]) => field)).toEqual(['codeState']);
  });

  it.each(['2026-02-29', '2026-13-01', '31.12.2027', '2026-2-3', ''])(
    'refuses the use-by date %j',
    (useBy) => {
      expect(faultsOf({ ...said, useBy }).map(([field]) => field)).toEqual(['useBy']);
    },
  );

  it.each(['2026-02-29', '2026-02', '2026-11-26', '2028-07-01', 'x'])(
    'refuses the production date %j',
    (manufacturedOn) => {
      expect(faultsOf({ ...said, manufacturedOn })[0]?.[0]).toBe('manufacturedOn');
    },
  );

  it('refuses goods made after their own use-by date', () => {
    const faults = faultsOf({ ...said, useBy: '2026-06-30', manufacturedOn: '2026-07-01' });
    expect(faults).toEqual([['manufacturedOn', expect.stringMatching(/2026-07-01.*2026-06-30/)]]);
  });
});
