import { describe, expect, it } from 'vitest';
import { german } from '../texts/de/german.js';
import { english } from '../texts/en/english.js';
import { reasonWords } from './reason-words.js';

const of = { unit: 'microlitres', currency: 'EUR' } as const;
const plain = (text: string) => text.replaceAll(/\s/g, ' ');
const expires = {
  code: 'expires',
  figures: { units: 4200, wasteMinor: 1234.4, firstOn: '2027-01-05' },
  message: 'About 4.2 ml will probably expire.',
};

describe('a reason of a plan', () => {
  it('writes money, days and shares in English as the rest of the page does', () => {
    expect(reasonWords(english, expires, of)).toBe(
      'About 4.2 ml of what is here or coming will probably expire unused (€12.34), the first on 5 Jan 2027.',
    );
    const target = { code: 'service target assumed', figures: { perMille: 950 }, message: '95 %' };
    expect(reasonWords(english, target, of)).toContain('95% of the need');
  });

  it('is said in German from its figures, each by what its name says it is', () => {
    expect(plain(reasonWords(german, expires, of))).toBe(
      '4,2 ml davon laufen voraussichtlich ab, zuerst am 05.01.2027: ein Verlust von 12,34 €.',
    );
    const order = { packs: 2, containers: 2, units: 24_000, on: '2026-11-26', priceMinor: 4800 };
    expect(plain(reasonWords(german, { code: 'order', figures: order, message: '' }, of))).toBe(
      '2 Packungen (24 ml) am 26.11.2026 bestellen, für 48,00 €.',
    );
    const needed = { units: 900, sessions: 2.7, booked: 8, until: '2026-12-24' };
    expect(plain(reasonWords(german, { code: 'booked need', figures: needed, message: '' }, of))).toBe(
      'Gebucht bis 24.12.2026: 8 Sitzungen; voraussichtlich 3 davon brauchen zusammen 0,9 ml.',
    );
    const seldom = { ...needed, units: 70, sessions: 0.28 };
    expect(plain(reasonWords(german, { code: 'booked need', figures: seldom, message: '' }, of))).toBe(
      'Gebucht bis 24.12.2026: 8 Sitzungen; voraussichtlich 0,3 davon brauchen zusammen 0,07 ml.',
    );
  });

  it('says how a shade is kept in the words of the reader', () => {
    const range = {
      choice: 'let run out',
      chosenBy: 'cost',
      costPerYearMinor: 3175.4,
      otherwise: [
        { choice: 'keep in stock', costPerYearMinor: 4000, possible: true },
        { choice: 'order for the appointment', costPerYearMinor: 10, possible: false },
      ],
    };
    expect(plain(reasonWords(german, { code: 'range', figures: range, message: '' }, of))).toBe(
      'Gewählt: auslaufen lassen, 31,75 € im Jahr. Sonst: vorrätig halten (40,00 €), zum Termin bestellen (zu wenige, um nur zum Termin zu bestellen).',
    );
  });

  it('stays readable where a figure is missing, or its code is a new one', () => {
    const without = { ...expires, figures: { ...expires.figures, firstOn: null } };
    expect(reasonWords(german, without, of)).toBe(expires.message);
    expect(reasonWords(german, { ...expires, code: 'something new' }, of)).toBe(expires.message);
  });

  it('says money in the currency of the studio, also where the service says minor units', () => {
    const assumed = { code: 'order cost assumed', figures: { costMinor: 500 }, message: '500 minor units' };
    expect(reasonWords(english, assumed, of)).toContain('€5.00');
  });
});
