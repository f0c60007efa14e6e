import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryElements } from '../../../tests/support/arbitrary-elements.js';
import type { Element } from './element.js';
import {
  type ElementStringStyle,
  maximumErrors,
  parseElementString,
  printElementString,
} from './element-string.js';

const today = '2026-03-01';
const gtin = '09506000134352';

function elementsIn(text: string): string {
  const { elements, errors } = parseElementString(text, { today });
  expect(errors).toEqual([]);
  return elements.map((element) => `${element.applicationIdentifier}=${element.value}`).join(' ');
}

function errorsIn(text: string, style?: ElementStringStyle): string[] {
  const { errors } = parseElementString(text, { today }, style);
  return errors.map((error) => `${error.code} ${error.applicationIdentifier ?? '-'} at ${error.position}`);
}

describe('a raw element string', () => {
  it('ends elements of predefined length by themselves and others at a separator', () => {
    expect(elementsIn(`01${gtin}1726013110AB-1\u001d21X7`)).toBe(`01=${gtin} 17=260131 10=AB-1 21=X7`);
  });

  it('drops a separator at the beginning, after a predefined length and at the end', () => {
    expect(elementsIn(`\u001d01${gtin}\u001d17260131\u001d10AB\u001d`)).toBe(`01=${gtin} 17=260131 10=AB`);
  });

  it('needs a separator after (235), whose first digits were once of predefined length', () => {
    expect(elementsIn(`01${gtin}235TPX01\u001d30012`)).toBe(`01=${gtin} 235=TPX01 30=012`);
  });

  it('refuses a second separator in a row and two at the beginning', () => {
    expect(errorsIn(`01${gtin}10AB\u001d\u001d21X`)).toEqual(['misplaced-separator - at 22']);
    expect(errorsIn(`\u001d\u001d01${gtin}`)).toEqual(['misplaced-separator - at 2']);
  });

  it('does not take a caret for a separator', () => {
    expect(errorsIn(`^01${gtin}`)).toEqual(['unknown-identifier - at 1']);
    expect(errorsIn(`01${gtin}10AB^21X`)).toEqual(['foreign-character 10 at 21']);
  });

  it('goes on at the next separator after an identifier GS1 has not assigned', () => {
    expect(errorsIn(`0500\u001d01${gtin}\u001d19260131\u001d10`)).toEqual([
      'unknown-identifier - at 1',
      'unknown-identifier - at 23',
      'value-too-short 10 at 34',
    ]);
  });

  it('says that an empty text holds no element', () => {
    expect(errorsIn('')).toEqual(['empty - at 1']);
    expect(errorsIn('\u001d')).toEqual(['empty - at 1']);
  });

  it('names a value cut short by the end or by a separator', () => {
    expect(errorsIn('01095060001343')).toEqual(['value-too-short 01 at 3']);
    expect(errorsIn(`01${gtin}172601\u001d10A`)).toEqual(['value-too-short 17 at 19']);
  });
});

describe('a bracketed element string', () => {
  it('is read as people write it, with spaces around values', () => {
    expect(elementsIn(`(01)${gtin}(17)260131(10)AB-1`)).toBe(`01=${gtin} 17=260131 10=AB-1`);
    expect(elementsIn(`(01) ${gtin} (10) AB `)).toBe(`01=${gtin} 10=AB`);
  });

  it('reads \\( as a bracket in a value and a bare closing bracket as itself', () => {
    expect(elementsIn(`(01)${gtin}(10)A\\(21)B`)).toBe(`01=${gtin} 10=A(21)B`);
  });

  it('refuses a bare opening bracket in a value, and text before the first bracket', () => {
    expect(errorsIn(`(01)${gtin}(10)A(B)`)).toEqual(['misplaced-bracket - at 24']);
    expect(errorsIn(`x(01)${gtin}`, 'bracketed')).toEqual(['misplaced-bracket - at 1']);
  });

  it('counts positions over what was escaped', () => {
    expect(errorsIn(`(01)${gtin}(10)A\\(#`)).toEqual(['foreign-character 10 at 26']);
  });
});

describe('the rules of GS1', () => {
  it.each([
    [`(01)09506000134353`, 'check-digit 01 at 18'],
    [`(01)${gtin}(17)261301`, 'date-or-month 17 at 25'],
    [`(01)${gtin}(17)260229`, 'date-or-month 17 at 27'],
    [`(01)${gtin}(7003)2602001200`, 'date 7003 at 29'],
    [`(01)${gtin}(10)123456789012345678901`, 'value-too-long 10 at 23'],
    [`(01)${gtin}(10)A B`, 'foreign-character 10 at 24'],
    [`(01)${gtin}(10)`, 'value-too-short 10 at 23'],
    [`(01)${gtin}(423)2082`, 'value-too-short 423 at 27'],
    [`(01)${gtin}(422)000`, 'country-number 422 at 24'],
    ['(10)AB', 'missing-requisite 10 at 1'],
    ['(17)260131', 'missing-requisite 17 at 1'],
    [`(01)${gtin}(250)S2`, 'missing-requisite 250 at 19'],
    [`(02)${gtin}`, 'missing-requisite 02 at 1'],
    [`(02)${gtin}(37)12`, 'missing-requisite 37 at 19'],
    [`(01)${gtin}(21)S(235)T`, 'excluded-pair 21 at 19'],
    [`(01)${gtin}(3100)000100(3101)000010`, 'excluded-pair 3100 at 19'],
    [`(01)${gtin}(10)A(10)B`, 'repeated 10 at 24'],
  ])('refuse %s: %s', (text, expected) => {
    expect(errorsIn(text)).toEqual([expected]);
  });

  it('let an identifier be repeated with an equal value', () => {
    expect(elementsIn(`(01)${gtin}(10)A(10)A`)).toBe(`01=${gtin} 10=A 10=A`);
  });

  it('let contents stand with their count and container, but not with a GTIN', () => {
    expect(elementsIn(`(00)095060001343500002(02)${gtin}(37)12`)).toContain('37=12');
    expect(errorsIn(`(00)095060001343500002(01)${gtin}(02)${gtin}(37)12`)).toEqual([
      'excluded-pair 01 at 23',
      'excluded-pair 02 at 41',
    ]);
  });

  it('read the century from the day of reading', () => {
    const text = `(01)${gtin}(17)000229`;
    expect(parseElementString(text, { today: '2026-01-01' }).errors).toEqual([]);
    expect(parseElementString(text, { today: '2060-01-01' }).errors).toHaveLength(1);
  });

  it('give one sentence that names the identifier, the place, what was seen and what is allowed', () => {
    const [error] = parseElementString(`01${gtin}17261301`, { today, charactersBefore: 3 }).errors;
    expect(error?.message).toBe(
      'AI (17), character 24: seen "13", allowed is a month 01 to 12. Compare the label, then scan or type it again.',
    );
  });

  it('name at most twenty faults', () => {
    expect(parseElementString('10\u001d'.repeat(100), { today }).errors).toHaveLength(maximumErrors);
  });
});

describe('printing and reading', () => {
  it.each(['raw', 'bracketed'] as const)('give back any valid elements, %s', (style) => {
    fc.assert(
      fc.property(arbitraryElements, (elements) => {
        const reading = parseElementString(printElementString(elements, style), { today }, style);
        expect(reading.errors).toEqual([]);
        expect(reading.elements).toEqual(elements);
      }),
      { numRuns: 500 },
    );
  });

  it('put a separator only where one is needed', () => {
    const elements: Element[] = [
      { applicationIdentifier: '01', value: gtin },
      { applicationIdentifier: '10', value: 'A(1)' },
      { applicationIdentifier: '91', value: 'X' },
    ];
    expect(printElementString(elements, 'raw')).toBe(`01${gtin}10A(1)\u001d91X`);
    expect(printElementString(elements, 'bracketed')).toBe(`(01)${gtin}(10)A\\(1)(91)X`);
  });

  it('never throw and never take a changed check digit for right', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const { errors } = parseElementString(text, { today });
        for (const error of errors) expect(error.position).toBeGreaterThan(0);
      }),
    );
    for (let digit = 0; digit < 10; digit++) {
      expect(errorsIn(`01${gtin.slice(0, -1)}${digit}`)).toHaveLength(digit === 2 ? 0 : 1);
    }
  });
});
