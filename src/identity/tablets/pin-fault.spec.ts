import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pinFault } from './pin-fault.js';

/** Every text of so many digits. */
function* all(digits: number): Generator<string> {
  for (let number = 0; number < 10 ** digits; number += 1) yield String(number).padStart(digits, '0');
}

describe('a PIN', () => {
  it.each(['7305', '8046', '4170', '50739', '860473', '9240617', '83649057'])('%s can be used', (pin) => {
    expect(pinFault(pin)).toBeUndefined();
  });

  it.each([
    ['0000', 'repeats itself'],
    ['7777777', 'repeats itself'],
    ['1212', 'repeats itself'],
    ['123123', 'repeats itself'],
    ['48614861', 'repeats itself'],
    ['1234', 'counts up or down'],
    ['0123', 'counts up or down'],
    ['7890', 'counts up or down'],
    ['4321', 'counts up or down'],
    ['0987', 'counts up or down'],
    ['12345678', 'counts up or down'],
    ['2580', 'line on the keypad'],
    ['1985', 'a year or a date'],
    ['2026', 'a year or a date'],
    ['3112', 'a year or a date'],
    ['1225', 'a year or a date'],
    ['240789', 'a year or a date'],
    ['890724', 'a year or a date'],
    ['24071989', 'a year or a date'],
    ['19890724', 'a year or a date'],
  ])('%s cannot be used, for it %s', (pin, why) => {
    expect(pinFault(pin)).toContain(why);
  });

  it.each([
    ['', 'digits only'],
    ['12a4', 'digits only'],
    ['٣٧٠٥', 'digits only'],
    ['7305\n', 'digits only'],
    ['730', 'has 3 digits'],
    ['730518264', 'has 9 digits'],
  ])('%j cannot be used, for it %s', (pin, why) => {
    expect(pinFault(pin)).toContain(why);
  });

  it('may still be most of those with four digits', () => {
    const usable = [...all(4)].filter((pin) => pinFault(pin) === undefined);
    expect(usable.length).toBeGreaterThan(8_500);
  });

  it('of any text is either usable or told why not', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        if (/^[0-9]{4,8}$/.test(text)) return;
        expect(pinFault(text)).toBeTypeOf('string');
      }),
    );
  });
});
