import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type CartridgeConfiguration,
  leastDiameterHundredthsMillimetre,
  mostDiameterHundredthsMillimetre,
  mostPoints,
  printCartridge,
  readCartridge,
} from './cartridge-notation.js';

function error(text: string) {
  const reading = readCartridge(text);
  if (!('error' in reading)) throw new Error(`${text} was read as ${JSON.stringify(reading)}`);
  return reading.error;
}

function cartridge(
  points: number,
  grouping: CartridgeConfiguration['grouping'],
  diameterHundredthsMillimetre: number | null,
  taper: CartridgeConfiguration['taper'] = null,
): CartridgeConfiguration {
  return { points, grouping, diameterHundredthsMillimetre, taper };
}

describe('cartridge notation', () => {
  // Trade notation [diameter][points][grouping][taper], no standards body [S].
  it.each([
    ['1207RL', cartridge(7, 'round liner', 35)],
    ['1203RLST', cartridge(3, 'round liner', 35, 'short')],
    ['0.30/1RL', cartridge(1, 'round liner', 30)],
    ['30/1RL', cartridge(1, 'round liner', 30)],
    ['3RL', cartridge(3, 'round liner', null)],
  ])('reads %s', (text, configuration) => {
    expect(readCartridge(text)).toEqual(configuration);
  });

  it.each([
    ['06', 20],
    ['08', 25],
    ['10', 30],
    ['12', 35],
  ])('reads the diameter number %s [S]', (number, hundredths) => {
    expect(readCartridge(`${number}05RL`)).toEqual(cartridge(5, 'round liner', hundredths));
  });

  it('reads 0.18 mm, which has no number', () => {
    expect(readCartridge('0.18/3RL')).toEqual(cartridge(3, 'round liner', 18));
    expect(readCartridge('18/3RL')).toEqual(cartridge(3, 'round liner', 18));
  });

  it.each([
    ['RL', 'round liner'],
    ['RS', 'round shader'],
    ['M', 'magnum'],
    ['M1', 'magnum'],
    ['M2', 'stacked magnum'],
    ['RM', 'curved magnum'],
    ['CM', 'curved magnum'],
    ['F', 'flat'],
    [' slope', 'slope'],
    [' blade', 'hand blade'],
  ] as const)('reads the grouping %s, alone and with each taper', (written, grouping) => {
    expect(readCartridge(`1009${written}`)).toEqual(cartridge(9, grouping, 30));
    // ST stands in the trade's own examples [S]; MT, LT and XLT are written after its pattern [C].
    expect(readCartridge(`1009${written}ST`)).toEqual(cartridge(9, grouping, 30, 'short'));
    expect(readCartridge(`1009${written}MT`)).toEqual(cartridge(9, grouping, 30, 'medium'));
    expect(readCartridge(`1009${written}LT`)).toEqual(cartridge(9, grouping, 30, 'long'));
    expect(readCartridge(`1009${written}XLT`)).toEqual(cartridge(9, grouping, 30, 'extra long'));
  });

  it.each([
    [' 1207rl ', cartridge(7, 'round liner', 35)],
    ['1207 RL ST', cartridge(7, 'round liner', 35, 'short')],
    ['0,30/1RL', cartridge(1, 'round liner', 30)],
    ['0.3/1RL', cartridge(1, 'round liner', 30)],
    ['.30 mm / 1 RL', cartridge(1, 'round liner', 30)],
    ['0.40/7RL', cartridge(7, 'round liner', 40)],
    ['40/7RL', cartridge(7, 'round liner', 40)],
    ['15M', cartridge(15, 'magnum', null)],
  ])('reads %j as well', (text, configuration) => {
    expect(readCartridge(text)).toEqual(configuration);
  });

  it('leaves a diameter that is not written unknown instead of assuming one', () => {
    expect(readCartridge('12RL')).toEqual(cartridge(12, 'round liner', null));
    expect(readCartridge('08RL')).toEqual(cartridge(8, 'round liner', null));
  });

  it.each(['1307RL', '1407RL', '13/7RL', '14/7RL'])(
    'does not take the diameter of %s for 0.40 mm',
    (text) => {
      // 0.40 mm is written 13 by some makers and 14 by others [S].
      const { code, message, readings } = error(text);
      expect(code).toBe('cartridge diameter ambiguous');
      expect(readings).toHaveLength(2);
      expect(readings[0]).toContain('0.40 mm');
      expect(readings[1]).toContain('another diameter');
      const otherNumber = text.startsWith('13') ? '14' : '13';
      expect(readings[1]).toContain(`write 0.40 mm as ${otherNumber}`);
      expect(message).toMatch(/as 13, others as 14.*millimetres.*0\.40\/7RL/);
    },
  );

  it.each([
    ['12/7RL', '0.35 mm', '0.12 mm'],
    ['10/7RL', '0.30 mm', '0.10 mm'],
    ['08/7RL', '0.25 mm', '0.08 mm'],
    ['6/7RL', '0.20 mm', '0.06 mm'],
  ])('does not choose between number and hundredths in %s', (text, asNumber, asHundredths) => {
    const { code, readings } = error(text);
    expect(code).toBe('cartridge diameter ambiguous');
    expect(readings[0]).toContain(asNumber);
    expect(readings[1]).toContain(asHundredths);
  });

  it('does not choose between the readings of three digits', () => {
    expect(error('123RL')).toMatchObject({
      code: 'cartridge points ambiguous',
      readings: ['diameter number 12, 3 points', 'diameter number 01, 23 points', '123 points'],
    });
    expect(error('12007RL').code).toBe('cartridge points ambiguous');
  });

  it.each(['0707RL', '1107RL', '0.70/3RL', '0.05/3RL', '.0/3RL', '99/3RL', '130/3RL'])(
    'refuses the diameter of %s',
    (text) => {
      expect(error(text).code).toBe('cartridge diameter unknown');
    },
  );

  it.each(['0RL', '1200RL', '0.30/0RL', '0.30/100RL'])('refuses the points of %s', (text) => {
    expect(error(text).code).toBe('cartridge points out of range');
  });

  it.each([
    '',
    'RL',
    '7',
    '1207',
    '1207XX',
    '1207ST',
    '1207RLXT',
    '12 07RL',
    '-3RL',
    '1.30/3RL',
    '3RL3',
    '0.30 1RL',
  ])('does not understand %j and says how to write it', (text) => {
    const { code, message } = error(text);
    expect(code).toBe('cartridge notation not understood');
    expect(message).toContain('1207RL');
  });

  it('keeps an over-long text out of the message', () => {
    expect(error('1'.repeat(100_000)).message.length).toBeLessThan(500);
  });
});

describe('printing a cartridge', () => {
  it('uses the diameter number where there is one, else millimetres, else nothing', () => {
    expect(printCartridge(cartridge(7, 'round liner', 35))).toBe('1207RL');
    expect(printCartridge(cartridge(3, 'round liner', 35, 'short'))).toBe('1203RLST');
    expect(printCartridge(cartridge(3, 'round liner', 18))).toBe('0.18/3RL');
    expect(printCartridge(cartridge(9, 'curved magnum', 40, 'long'))).toBe('0.40/9RMLT');
    expect(printCartridge(cartridge(3, 'round liner', null))).toBe('3RL');
    expect(printCartridge(cartridge(14, 'hand blade', 18))).toBe('0.18/14 blade');
    expect(printCartridge(cartridge(7, 'slope', 30, 'medium'))).toBe('1007 slope MT');
  });

  it('refuses what no notation can say', () => {
    expect(() => printCartridge(cartridge(0, 'flat', null))).toThrow(RangeError);
    expect(() => printCartridge(cartridge(100, 'flat', null))).toThrow(RangeError);
    expect(() => printCartridge(cartridge(1.5, 'flat', null))).toThrow(RangeError);
    expect(() => printCartridge(cartridge(3, 'flat', 9))).toThrow(RangeError);
    expect(() => printCartridge(cartridge(3, 'flat', 30.5))).toThrow(RangeError);
  });

  it('is read back as the same configuration', () => {
    const configuration = fc.record({
      points: fc.integer({ min: 1, max: mostPoints }),
      grouping: fc.constantFrom<CartridgeConfiguration['grouping'][]>(
        'round liner',
        'round shader',
        'magnum',
        'stacked magnum',
        'curved magnum',
        'flat',
        'slope',
        'hand blade',
      ),
      diameterHundredthsMillimetre: fc.oneof(
        fc.constant(null),
        fc.constantFrom(20, 25, 30, 35),
        fc.integer({ min: leastDiameterHundredthsMillimetre, max: mostDiameterHundredthsMillimetre }),
      ),
      taper: fc.constantFrom<CartridgeConfiguration['taper'][]>(
        null,
        'short',
        'medium',
        'long',
        'extra long',
      ),
    });
    fc.assert(
      fc.property(configuration, (one) => {
        expect(readCartridge(printCartridge(one))).toEqual(one);
      }),
      { numRuns: 2000 },
    );
  });

  it('is stable: what was read prints to something that reads the same, for any text', () => {
    const piece = fc.constantFrom(
      '0',
      '1',
      '2',
      '3',
      '6',
      '8',
      '.',
      '/',
      'R',
      'L',
      'M',
      'S',
      'T',
      'F',
      ' ',
      'C',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 10 }), (pieces) => {
        const reading = readCartridge(pieces.join(''));
        if ('error' in reading) expect(reading.error.message).not.toBe('');
        else expect(readCartridge(printCartridge(reading))).toEqual(reading);
      }),
      { numRuns: 2000 },
    );
  });
});
