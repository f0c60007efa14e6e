import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { processorMilliseconds } from '../../tests/support/processor-time.js';
import { maximumSymbolCharacters, readSymbol, type SymbolReading } from './barcode.js';
import { parseDigitalLink } from './gs1/digital-link.js';
import { printElementString } from './gs1/element-string.js';
import { formatLabelCode, labelElementString, makeLabelCode } from './own-label.js';

const today = '2026-03-01';
const gtin = '09506000134352';
const code = makeLabelCode(Uint8Array.from([3, 1, 4, 1, 5, 9, 2, 6, 5, 3, 5, 8]));

function read(text: string, symbologyIdentifier?: string): SymbolReading {
  return readSymbol(symbologyIdentifier === undefined ? { text } : { text, symbologyIdentifier }, today);
}

function kindOf(text: string, symbologyIdentifier?: string): string {
  return read(text, symbologyIdentifier).kind;
}

const label = { kind: 'gs1', gtin14: gtin, lotCode: 'AB-1', serial: 'S7' };

describe('a symbol that carries elements', () => {
  it.each([']C1', ']e0', ']d2', ']Q3', ']J1'])(
    '%s is read, beside the text or in front of it',
    (identifier) => {
      const raw = `01${gtin}1727020010AB-1\u001d21S7`;
      for (const reading of [
        read(raw, identifier),
        read(identifier + raw),
        read(`\u001d${raw}`, identifier),
      ]) {
        expect(reading).toMatchObject(label);
        expect(reading).toMatchObject({
          symbologyIdentifier: identifier,
          useBy: { date: '2027-02-28', precision: 'month' },
        });
      }
    },
  );

  it('is nothing but a raw element string', () => {
    expect(kindOf(`(01)${gtin}`, ']d2')).toBe('invalid');
    expect(kindOf('8506000134352', ']d2')).toBe('invalid');
    expect(kindOf(code, ']d2')).toBe('invalid');
  });

  it('gives back what it could take apart, so that a second symbol can complete it', () => {
    expect(read('10AB-1', ']C1')).toMatchObject({
      kind: 'invalid',
      elements: [{ applicationIdentifier: '10', value: 'AB-1' }],
      errors: [{ code: 'missing-requisite', applicationIdentifier: '10', position: 1 }],
    });
  });

  it('counts positions in what was sent, with spaces and identifier in front', () => {
    expect(read(`  ]d201${gtin}17261301`)).toMatchObject({ errors: [{ position: 26, seen: '13' }] });
  });
});

describe('a product number', () => {
  it.each([
    ['9506000134352', undefined, gtin],
    ['9506000134352', ']E0', gtin],
    ['950600013439', ']E0', '00950600013439'],
    ['950600013439', undefined, '00950600013439'],
    ['95012346', ']E4', '00000095012346'],
    ['95012346', undefined, '00000095012346'],
    ['19506000134359', ']I1', '19506000134359'],
    [gtin, undefined, gtin],
    [']E09506000134352\r\n', undefined, gtin],
    [gtin, ']C0', gtin],
  ])('%s with %s is %s', (text, identifier, expected) => {
    expect(read(text, identifier)).toMatchObject({ kind: 'product only', gtin14: expected });
  });

  it('is refused with a wrong check digit where only a product number can be', () => {
    for (const [text, identifier] of [
      ['9506000134353', ']E0'],
      ['95012345', ']E4'],
      ['19506000134350', ']I1'],
      ['9506000134353', undefined],
      ['09506000134353', undefined],
    ] as const) {
      const reading = read(text, identifier);
      expect(reading).toMatchObject({
        kind: 'invalid',
        errors: [{ code: 'check-digit', position: text.length }],
      });
    }
  });

  it('of a length its symbol does not have is refused, but a shorter ITF symbol is text', () => {
    expect(kindOf('95012346', ']E0')).toBe('invalid');
    expect(kindOf('9506000134352', ']E4')).toBe('invalid');
    expect(kindOf('12345678', ']I1')).toBe('plain text');
  });

  it('is text with a doubt when 8 or 12 digits are none: they may be a date or a lot', () => {
    expect(read('20260301')).toMatchObject({ kind: 'plain text', doubts: [{ code: 'check-digit' }] });
    expect(read('123456789013')).toMatchObject({ kind: 'plain text', doubts: [{ code: 'check-digit' }] });
  });
});

describe('text without a symbology', () => {
  it('in brackets is an element string', () => {
    expect(read(`(01)${gtin}(10)AB-1(21)S7`)).toMatchObject(label);
    expect(kindOf(`(01)${gtin}(10)`)).toBe('invalid');
    expect(kindOf('(sample) from the fair')).toBe('plain text');
  });

  it('with a separator is an element string, at its beginning or inside', () => {
    expect(read(`\u001d01${gtin}10AB-1\u001d21S7`)).toMatchObject(label);
    expect(read(`10AB-1\u001d01${gtin}21S7`)).toMatchObject(label);
    expect(kindOf('AB\u001dCD')).toBe('invalid');
  });

  it('of digits that begin with 01 and a right GTIN is an element string', () => {
    expect(read(`01${gtin}1727020010AB-1`)).toMatchObject({ kind: 'gs1', gtin14: gtin, lotCode: 'AB-1' });
    expect(read(`01${gtin}17271301`)).toMatchObject({
      kind: 'plain text',
      doubts: [{ code: 'date-or-month' }],
    });
    expect(read('0109506000134353')).toMatchObject({ kind: 'plain text', doubts: [] });
  });

  it('that is a web address with a GS1 key is a Digital Link', () => {
    expect(read(`https://example.org/01/${gtin}/10/AB-1/21/S7?17=270200`)).toMatchObject(label);
    expect(kindOf(`https://example.org/01/${gtin}?10=AB`)).toBe('invalid');
    expect(kindOf('https://example.org/needles')).toBe('plain text');
  });

  it('that is nothing else is kept as it is, perhaps a lot code', () => {
    expect(read('  LOT-4/26  ')).toEqual({ kind: 'plain text', text: 'LOT-4/26', doubts: [] });
    expect(kindOf('')).toBe('invalid');
    expect(kindOf(' \r\n')).toBe('invalid');
    expect(kindOf('^0109506000134352')).toBe('plain text');
  });
});

describe('a symbol that may hold anything', () => {
  it('is a Digital Link, bracketed elements or an own label only when it is valid as one', () => {
    expect(read(`https://example.org/01/${gtin}/10/AB-1/21/S7`, ']Q1')).toMatchObject(label);
    expect(read(`(01)${gtin}(10)AB-1(21)S7`, ']Q1')).toMatchObject(label);
    expect(kindOf(code, ']d1')).toBe('own label');
    expect(read(`(01)${gtin}(10)`, ']Q1')).toMatchObject({
      kind: 'plain text',
      doubts: [{ code: 'value-too-short' }],
    });
    expect(kindOf('9506000134353', ']C0')).toBe('plain text');
  });

  it('is not guessed to be a raw element string', () => {
    expect(kindOf(`01${gtin}10AB`, ']C0')).toBe('plain text');
    expect(kindOf(`01${gtin}10AB\u001d21S`, ']d1')).toBe('plain text');
  });
});

describe('an own label', () => {
  it('is read typed, with hyphens and in small letters', () => {
    for (const typed of [code, formatLabelCode(code), code.toLowerCase()]) {
      expect(read(typed)).toMatchObject({ kind: 'own label', code });
    }
    expect(kindOf(`${code.slice(0, 11)}${code.endsWith('0') ? '1' : '0'}`)).toBe('plain text');
  });

  it('is read from its symbol, with what stands beside the code', () => {
    const elements = labelElementString({ code, gtin14: gtin, useBy: '2027-01-31', lotCode: 'AB-1' }, 2026);
    expect(read(printElementString(elements, 'raw'), ']d2')).toMatchObject({
      kind: 'own label',
      code,
      gtin14: gtin,
      lotCode: 'AB-1',
      useBy: { date: '2027-01-31', precision: 'day' },
    });
    expect(read(`91${code}`, ']d2')).toMatchObject({ kind: 'own label', code });
  });

  it('is not seen in internal data of another company', () => {
    expect(kindOf('91HELLO', ']d2')).toBe('gs1');
    expect(kindOf(`91${code.toLowerCase()}`, ']d2')).toBe('gs1');
    expect(kindOf(`92${code}`, ']d2')).toBe('gs1');
  });

  it('never clashes with a product number: it is never all digits', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'0123456789'), minLength: 12, maxLength: 12 }),
        (digits) => {
          expect(kindOf(digits)).not.toBe('own label');
        },
      ),
    );
  });
});

describe('any text at all', () => {
  const identifiers = [
    undefined,
    ']C1',
    ']e0',
    ']d2',
    ']Q3',
    ']J1',
    ']E0',
    ']E4',
    ']d1',
    ']Q1',
    ']C0',
    ']I1',
    ']',
    'x',
  ];

  it('is read without throwing, up to ten thousand characters', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 10_000, size: 'max' }),
          fc.string({ unit: fc.constantFrom(...'()01\u001d\\%/?&=+ A-'), maxLength: 5_000, size: 'max' }),
          fc.array(fc.nat(0xffff), { maxLength: 500 }).map((units) => String.fromCharCode(...units)),
        ),
        fc.constantFrom(
          '',
          '(01)',
          '01',
          '\u001d',
          `https://example.org/01/${gtin}/10/`,
          `https://e/01/${gtin}?`,
        ),
        fc.constantFrom(...identifiers),
        (text, before, identifier) => {
          const reading = read(before + text, identifier);
          expect(reading.kind).toBeTypeOf('string');
          if (reading.kind === 'invalid') expect(reading.errors.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('is refused unread beyond 4096 characters', () => {
    expect(read('A'.repeat(maximumSymbolCharacters)).kind).toBe('plain text');
    expect(read('A'.repeat(maximumSymbolCharacters + 1))).toMatchObject({
      kind: 'invalid',
      errors: [{ code: 'text-too-long', position: 4097 }],
    });
  });

  it('takes bounded time, even when it is made to take long', async () => {
    const worst = [
      '10\u001d'.repeat(1365),
      '(10)'.repeat(1024),
      `(10)${' '.repeat(4000)}x`,
      `(8030)${'='.repeat(4000)}x`,
      `https://e/${'01/'.repeat(1300)}x`,
      `https://e/01/${gtin}?${'17=1&'.repeat(800)}`,
      '\u001d'.repeat(4096),
      '0'.repeat(4096),
    ];
    const readAll = () => {
      for (const text of worst) for (const identifier of identifiers) read(text, identifier);
    };
    // 112 readings. One that took quadratic time on these texts would need far longer.
    expect(await processorMilliseconds(readAll)).toBeLessThan(5_000);
  });

  it('reads a Digital Link as the link reader alone does', () => {
    const uri = `https://example.org/01/${gtin}/10/AB`;
    expect(read(uri)).toMatchObject({ elements: parseDigitalLink(uri, { today }).elements });
  });
});
