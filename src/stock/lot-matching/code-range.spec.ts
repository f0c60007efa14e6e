import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { processorMilliseconds } from '../../../tests/support/processor-time.js';
import { codeRange, isSlipFromRange, placeInRange } from './code-range.js';
import { isOneSlipApart } from './one-slip.js';

const place = (from: string, through: string, code: string) => placeInRange(codeRange(from, through), code);

describe('a range of codes', () => {
  /** `07110002 thru 07110009` and "from 00112 through 10412": openFDA test data `ucm308307.json`, CC0 [P]. */
  it.each([
    ['07110002', '07110009', '07110002', 'inside'],
    ['07110002', '07110009', '07110005', 'inside'],
    ['07110002', '07110009', '07110009', 'inside'],
    ['07110002', '07110009', '07110001', 'outside'],
    ['07110002', '07110009', '07110010', 'outside'],
    ['07110002', '07110009', '7110005', 'other length'],
    ['07110002', '07110009', '007110005', 'other length'],
    ['00112', '10412', '00112', 'inside'],
    ['00112', '10412', '09999', 'inside'],
    ['00112', '10412', '9999', 'other length'],
    ['00112', '10412', '10413', 'outside'],
    ['00112', '10412', '00111', 'outside'],
  ] as const)('%s through %s: %s is %s', (from, through, code, expected) => {
    expect(place(from, through, code)).toBe(expected);
  });

  it.each([
    ['A100', 'A199', 'A150', 'inside', 'text before the number'],
    ['A100', 'A199', 'B150', 'outside', 'other text before it'],
    ['A100', 'A199', '150', 'outside', 'none before it'],
    ['A100', 'A199', 'A0150', 'other length', 'a zero too many'],
    ['100-X', '199-X', '150-X', 'inside', 'text after it'],
    ['100-X', '199-X', '150-Y', 'outside', 'other text after it'],
    ['L12-100', 'L12-120', 'L12-110', 'inside', 'an equal number before it'],
    ['L12-100', 'L12-120', 'L13-110', 'outside', 'another number before it'],
    ['12.03.15', '12.03.19', '12.03.17', 'inside', 'codes like dates'],
    ['98', '105', '99', 'inside', 'counting on into more digits'],
    ['98', '105', '100', 'inside', 'beyond them'],
    ['98', '105', '099', 'other length', 'a zero that counting does not write'],
    ['00001', '99999999', '12345', 'inside', 'an absurd range'],
    ['00001', '99999999', '1234567', 'inside', 'an absurd range, more digits'],
    ['00001', '99999999', '01234567', 'other length', 'an absurd range, a zero too many'],
    ['00001', '99999999', '100000000', 'outside', 'beyond an absurd range'],
    ['1234A', '1234D', '1234C', 'inside', 'letters counting'],
    ['1234A', '1234D', '1234E', 'outside', 'beyond the letters'],
    ['1234A', '1234D', '1235B', 'outside', 'another number before the letter'],
    ['1234A', '1234D', '1234', 'outside', 'no letter'],
    ['L1001', '1009', 'L1005', 'inside', 'the text is written once'],
    ['L1001', '09', 'L1005', 'perhaps inside', 'only the last digits are written, after text'],
    ['1001', '09', '1005', 'perhaps inside', 'only the last digits are written'],
    ['1001', '09', '1010', 'outside', 'beyond those'],
    ['10412', '00112', '05000', 'perhaps inside', 'the higher one first'],
    ['A9', 'A1', 'A5', 'perhaps inside', 'the higher one first, after text'],
    ['D', 'A', 'B', 'perhaps inside', 'the higher letter first'],
    ['A12', 'A3', 'A5', 'perhaps inside', 'the higher one first, with more digits'],
    ['A12', 'A3', 'A13', 'outside', 'beyond that'],
    ['00100', '999', '150', 'other length', 'ends of different lengths'],
    ['00100', '999', '00150', 'other length', 'ends of different lengths, as the first is written'],
    ['00100', '999', '00100', 'inside', 'the first of those'],
    ['00100', '999', '999', 'inside', 'the last of those'],
    ['00100', '999', '1000', 'outside', 'beyond those'],
    ['12-900', '13-100', '12-950', 'perhaps inside', 'two numbers counting'],
    ['12-900', '13-100', '13-050', 'perhaps inside', 'two numbers counting, the second year'],
    ['12-900', '13-100', '13-150', 'outside', 'two numbers counting, beyond'],
    ['12-900', '13-100', '12-899', 'outside', 'two numbers counting, before'],
    ['12-900', '13-100', '12950', 'outside', 'two numbers counting, another shape'],
    ['13-100', '12-900', '12-950', 'perhaps inside', 'two numbers counting, the higher first'],
    ['AB12', 'XYZ', 'QQ', 'perhaps inside', 'ends that share nothing'],
    ['AB12', 'AC13', 'AB12', 'perhaps inside', 'ends that differ in letter and number'],
    ['A5', 'A5', 'A5', 'inside', 'a single code'],
    ['A5', 'A5', 'A6', 'outside', 'not the single code'],
    ['X', 'X', 'X', 'inside', 'a single letter'],
  ] as const)('%s through %s: %s is %s – %s', (from, through, code, expected, _) => {
    expect(place(from, through, code)).toBe(expected);
  });

  it('holds its ends and all that is counted between them, and nothing beyond', () => {
    const ends = fc
      .tuple(fc.nat(99_999), fc.nat(99_999))
      .map(([one, other]) => [Math.min(one, other), Math.max(one, other)]);
    fc.assert(
      fc.property(
        ends,
        fc.nat(99_999),
        fc.constantFrom('', 'A', 'LX-'),
        fc.constantFrom('', '/E'),
        ([low = 0, high = 0], number, before, after) => {
          const code = (value: number) => before + String(value).padStart(5, '0') + after;
          const isInside = low <= number && number <= high;
          expect(place(code(low), code(high), code(number))).toBe(isInside ? 'inside' : 'outside');
        },
      ),
      { numRuns: 2_000 },
    );
  });

  it('does not grow dearer with the number of its codes', async () => {
    const range = codeRange('0'.repeat(60), '9'.repeat(60));
    const placeMany = () => {
      for (let count = 0; count < 1_000; count += 1) placeInRange(range, String(count).padStart(60, '0'));
    };
    expect(await processorMilliseconds(placeMany)).toBeLessThan(10_000);
  });
});

describe('a code one slip from a range', () => {
  it.each([
    ['07110002', '07110009', '07110019', true, 'a digit changed'],
    ['07110002', '07110009', '0711005', true, 'a digit missing'],
    ['07110002', '07110009', '071100055', true, 'a digit added'],
    ['07110002', '07110009', '07101005', true, 'two swapped'],
    ['07110002', '07110009', '0711X005', true, 'a letter for a digit'],
    ['07110002', '07110009', '08120005', false, 'two digits changed'],
    ['A100', 'A199', 'B150', true, 'the letter before changed'],
    ['A100', 'A199', '150', true, 'the letter before missing'],
    ['A100', 'A199', '1A50', true, 'the letter swapped with the first digit'],
    ['100X', '199X', '150Y', true, 'the letter behind changed'],
    ['100X', '199X', '150', true, 'the letter behind missing'],
    ['100X', '199X', '150YY', false, 'two letters behind'],
    ['A100', 'A199', 'B250', false, 'letter and number changed'],
    ['1234A', '1234D', '1235B', true, 'letters counting, a digit changed'],
    ['1234A', '1234D', '1245B', false, 'letters counting, two digits changed'],
    ['12-900', '13-100', '12-650', true, 'two numbers counting, a digit changed'],
    ['AB12', 'XYZ', 'QQ', false, 'ends that share nothing'],
  ] as const)('%s through %s: %s – %s (%s)', (from, through, code, expected, _) => {
    expect(isSlipFromRange(codeRange(from, through), code)).toBe(expected);
  });

  it('is found as by spelling the range out', () => {
    const digits = fc.string({ unit: fc.constantFrom('0', '1', '2', 'A', 'B'), maxLength: 6 });
    fc.assert(
      fc.property(
        fc.nat(60),
        fc.nat(60),
        fc.constantFrom('', 'A', 'AB'),
        fc.constantFrom('', 'B'),
        digits,
        (one, other, before, after, code) => {
          const [low, high] = [Math.min(one, other), Math.max(one, other)];
          const codes = Array.from(
            { length: high - low + 1 },
            (_, index) => before + String(low + index).padStart(3, '0') + after,
          );
          const range = codeRange(codes[0] ?? '', codes.at(-1) ?? '');
          fc.pre(low < high && !codes.includes(code));
          const bySpelling = codes.some((each) => isOneSlipApart(each, code));
          // A number of another length inside the range is found before slips are looked for.
          if (placeInRange(range, code) === 'outside') expect(isSlipFromRange(range, code)).toBe(bySpelling);
          else expect(placeInRange(range, code)).toBe('other length');
        },
      ),
      { numRuns: 2_000 },
    );
  });
});
