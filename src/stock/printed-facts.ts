import { isCalendarDay, readUseBy, type UseByPrecision } from './use-by.js';

export interface PrintedCode {
  kind: 'lot' | 'batch' | 'other';
  code: string;
}

/** What a person says stands on the package. Left out: nothing was said. */
export interface SaidOfPackage {
  codes?: readonly PrintedCode[];
  codeState?: 'printed' | 'none printed' | 'unreadable';
  /** YYYY-MM-DD, YYYY-MM or YYYY as printed; null: none is printed. */
  useBy?: string | null;
  /** YYYY-MM-DD; null: none is printed. */
  manufacturedOn?: string | null;
}

/** What its symbol says; a fact is absent when the symbol does not hold it. Dates are YYYY-MM-DD. */
export interface SymbolOfPackage {
  lotCode?: string;
  useBy?: { readonly date: string; readonly precision: 'day' | 'month' };
  producedOn?: { readonly date: string };
}

/** What stands on a package, said and scanned put together. */
export interface PrintedFacts {
  /** The code by which the lot is known; null when none is printed or it cannot be read. */
  code: string | null;
  codeState: 'printed' | 'none printed' | 'unreadable';
  /** Every code printed, each once, the one by which the lot is known first. */
  codes: PrintedCode[];
  /** Last day of use; null when none is printed. */
  useBy: string | null;
  useByPrecision: UseByPrecision | 'none printed';
  manufacturedOn: string | null;
}

export interface PackageFault {
  field: 'codes' | 'codeState' | 'useBy' | 'manufacturedOn';
  code: 'invalid-fields' | 'unusable-date';
  message: string;
}

/**
 * Puts together what is said of a package and what its symbol holds. The two must agree; nothing is guessed: without
 * a symbol that says so, it must be said that no code or no date is printed.
 *
 * @param day the studio's local day of receipt: nothing is made after it
 */
export function printedFacts(
  said: SaidOfPackage,
  symbol: SymbolOfPackage,
  day: string,
): { facts: PrintedFacts } | { faults: PackageFault[] } {
  const faults: PackageFault[] = [];
  const coded = codesOf(said, symbol, faults);
  const dated = useByOf(said, symbol, faults);
  const manufacturedOn = manufacturedOnOf(said, symbol, faults);
  if (manufacturedOn !== null && manufacturedOn > day) {
    const message = `manufactured on ${manufacturedOn} lies after the day of receipt, ${day}; compare with the label, day and month may be swapped`;
    faults.push({ field: 'manufacturedOn', code: 'unusable-date', message });
  }
  if (manufacturedOn !== null && dated.useBy !== null && manufacturedOn > dated.useBy) {
    const message = `manufactured on ${manufacturedOn} lies after the use-by date ${dated.useBy}; compare both with the label`;
    faults.push({ field: 'manufacturedOn', code: 'unusable-date', message });
  }
  return faults.length > 0 ? { faults } : { facts: { ...coded, ...dated, manufacturedOn } };
}

type Coded = Pick<PrintedFacts, 'code' | 'codeState' | 'codes'>;
type Dated = Pick<PrintedFacts, 'useBy' | 'useByPrecision'>;

function codesOf(said: SaidOfPackage, { lotCode }: SymbolOfPackage, faults: PackageFault[]): Coded {
  const given = said.codes ?? [];
  const fault = (field: 'codes' | 'codeState', message: string): Coded => {
    faults.push({ field, code: 'invalid-fields', message });
    return { code: null, codeState: 'none printed', codes: [] };
  };
  const state = said.codeState;
  if (state !== undefined && state !== 'printed') {
    if (given.length > 0) {
      return fault('codeState', `says "${state}", but codes names ${given[0]?.code}; give one of the two`);
    }
    if (lotCode !== undefined) {
      return fault(
        'codeState',
        `says "${state}", but the symbol holds the lot ${lotCode}; leave codeState out`,
      );
    }
    return { code: null, codeState: state, codes: [] };
  }
  const lots = given.filter(({ kind }) => kind === 'lot').map(({ code }) => code);
  if (lotCode !== undefined && lots.length > 0 && !lots.includes(lotCode)) {
    return fault(
      'codes',
      `the symbol holds the lot ${lotCode}, but codes names ${lots.join(', ')}; compare with the package and give the one that is right`,
    );
  }
  const fromSymbol: PrintedCode[] = lotCode === undefined ? [] : [{ kind: 'lot', code: lotCode }];
  const codes = onceEach([...fromSymbol, ...given].sort((a, b) => order(a) - order(b)));
  const [first] = codes;
  if (first === undefined) {
    return fault(
      'codes',
      'nothing is said of the lot; give the codes as printed, or codeState "none printed" or "unreadable"',
    );
  }
  return { code: first.code, codeState: 'printed', codes };
}

function useByOf(said: SaidOfPackage, symbol: SymbolOfPackage, faults: PackageFault[]): Dated {
  const nothing: Dated = { useBy: null, useByPrecision: 'none printed' };
  const fault = (code: PackageFault['code'], message: string): Dated => {
    faults.push({ field: 'useBy', code, message });
    return nothing;
  };
  const scanned = symbol.useBy;
  if (said.useBy === undefined) {
    if (scanned) return { useBy: scanned.date, useByPrecision: scanned.precision };
    return fault(
      'invalid-fields',
      'nothing is said of the use-by date; give it as printed, or null when none is printed',
    );
  }
  if (said.useBy === null) {
    return scanned === undefined
      ? nothing
      : fault(
          'invalid-fields',
          `says none is printed, but the symbol holds ${scanned.date}; leave useBy out`,
        );
  }
  const reading = readUseBy(said.useBy);
  if ('error' in reading) return fault('unusable-date', reading.error.message.replace(/\.$/, ''));
  if (scanned !== undefined && scanned.date !== reading.lastDay) {
    return fault(
      'unusable-date',
      `the symbol holds the use-by date ${scanned.date}, but ${said.useBy} was given; compare with the package and give the one that is right`,
    );
  }
  return { useBy: reading.lastDay, useByPrecision: reading.precision };
}

function manufacturedOnOf(
  said: SaidOfPackage,
  symbol: SymbolOfPackage,
  faults: PackageFault[],
): string | null {
  const scanned = symbol.producedOn?.date ?? null;
  if (said.manufacturedOn === undefined || said.manufacturedOn === null) return scanned;
  if (!isCalendarDay(said.manufacturedOn)) {
    const message = `"${said.manufacturedOn.slice(0, 40)}" is not a day of the calendar; write it as YYYY-MM-DD`;
    faults.push({ field: 'manufacturedOn', code: 'unusable-date', message });
    return null;
  }
  if (scanned !== null && scanned !== said.manufacturedOn) {
    const message = `the symbol holds the production date ${scanned}, but ${said.manufacturedOn} was given; compare with the package and give the one that is right`;
    faults.push({ field: 'manufacturedOn', code: 'unusable-date', message });
  }
  return said.manufacturedOn;
}

function order({ kind }: PrintedCode): number {
  return kind === 'lot' ? 0 : kind === 'batch' ? 1 : 2;
}

function onceEach(codes: PrintedCode[]): PrintedCode[] {
  return codes.filter(
    (code, index) =>
      codes.findIndex((other) => other.kind === code.kind && other.code === code.code) === index,
  );
}
