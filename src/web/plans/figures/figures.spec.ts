import { describe, expect, it } from 'vitest';
import { german } from '../../texts/de/german.js';
import { english } from '../../texts/en/english.js';
import { writtenChance, writtenPerMille, writtenShare } from './written-chance.js';
import { writtenMoney, writtenMoneyChange } from './written-money.js';
import { writtenUnits } from './written-units.js';

/** Spaces as a keyboard has them. */
const plain = (text: string) => text.replaceAll(/\s/g, ' ');

describe('how much of an item', () => {
  it.each([
    [12_500, '12.5 ml'],
    [340, '0.34 ml'],
    [123_456, '123 ml'],
    [0, '0 ml'],
    [-2, '0 ml'],
  ])('%d microlitres are %s', (units, written) => {
    expect(plain(writtenUnits(units, 'microlitres', english))).toBe(written);
  });

  it.each([
    [1, '1 piece', '1 Stück'],
    [0.4, '0.4 pieces', '0,4 Stück'],
    [1_240, '1,240 pieces', '1.240 Stück'],
  ])('%d pieces are %s', (units, inEnglish, inGerman) => {
    expect(writtenUnits(units, 'pieces', english)).toBe(inEnglish);
    expect(writtenUnits(units, 'pieces', german)).toBe(inGerman);
  });
});

describe('how likely it is', () => {
  it.each([
    [0, 'hardly ever'],
    [0.0009, 'hardly ever'],
    [0.004, '1 in 250'],
    [0.05, '1 in 20'],
    [0.2, '20%'],
    [0.654, '65%'],
    [0.975, '97.5%'],
    [0.9999, 'nearly certain'],
    [1, 'nearly certain'],
  ])('%d is %s', (chance, written) => {
    expect(writtenChance(chance, english)).toBe(written);
  });

  it('is a share, also as settings keep it', () => {
    expect([writtenShare(0.5, 'en-GB'), writtenPerMille(975, 'en-GB')]).toEqual(['50%', '97.5%']);
  });
});

describe('money', () => {
  it('is written in its currency, with as many decimals as that has', () => {
    expect(writtenMoney(1250, 'EUR', 'en-GB')).toBe('€12.50');
    expect(writtenMoney(1250.4, 'JPY', 'en-GB')).toBe('JP¥1,250');
    expect(plain(writtenMoney(1250, 'EUR', 'de-DE'))).toBe('12,50 €');
  });

  it('is never minus nothing, and a difference has its sign', () => {
    expect(writtenMoney(-0.3, 'EUR', 'en-GB')).toBe('€0.00');
    expect(writtenMoneyChange(-0.3, 'EUR', 'en-GB')).toBe('€0.00');
    expect([250, -250].map((minor) => writtenMoneyChange(minor, 'EUR', 'en-GB'))).toEqual([
      '+€2.50',
      '-€2.50',
    ]);
  });
});
