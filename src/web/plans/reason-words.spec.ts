import { describe, expect, it } from 'vitest';
import { replayAssumptions } from '../../reorder/replay/replay-assumptions.js';
import { german } from '../texts/de/german.js';
import { english } from '../texts/en/english.js';
import { type KnownReason } from '../texts/en/plan-reasons.js';
import { reasonWords } from './reason-words.js';

const of = { unit: 'microlitres', currency: 'EUR' } as const;
const plain = (text: string) => text.replaceAll(/\s/g, ' ');
const on = '2026-12-01';
const until = '2027-01-05';
/** One of each, with the figures that the service gives. */
const everyReason: Record<KnownReason, Record<string, unknown>> = {
  'booked need': { units: 900, sessions: 2.7, booked: 8, until },
  'course need': { units: 900, courses: 1, until },
  'touch-ups owed': { units: 900, sessions: 2.2, until },
  'unforeseen need': { units: 900, unitsPerWeek: 200, until },
  'no need expected': { until },
  'in stock': { units: 9_000, containers: 2, opened: 1 },
  expires: { units: 900, wasteMinor: 120, firstOn: on },
  'on the way': { units: 10_000, likely: on },
  'on hold': { units: 10_000 },
  'runs short': { chance: 0.5, on: null, until },
  lasts: { chance: 0.97, until },
  'lead time': { typicalDays: 4, days95: 7 },
  order: { packs: 2, containers: 2, units: 20_000, on, priceMinor: 4_800 },
  'too late': { shortChance: 0.3, arrival: on },
  covers: { days: 100, until, chanceAfter: 0.02 },
  'why not less': { packs: 1, moreMinor: 500, unmetUnits: 100, unmetUnitsMore: 90 },
  'why not more': { packs: 3, moreMinor: 500, wasteUnits: 100, wasteUnitsMore: 90 },
  'why not earlier': { on, moreMinor: 5 },
  'why not later': { on, moreMinor: 5 },
  'pack exceeds need': { packUnits: 10_000, needUnits: 300, wasteUnits: 9_000, wasteMinor: 2_000 },
  range: { choice: 'keep in stock', chosenBy: 'cost', costPerYearMinor: 7_200, otherwise: [] },
  'booked in time': { share: 0.4, days95: 7, sessionsPerYear: 5.2, unmetPerYear: 1 },
  'appointments to order for': { sessions: 1, units: 320, firstOn: on },
  'no offer': {},
  'price break taken': { fromPacks: 5, savedMinor: 300 },
  'minimum packs forced': { minimumPacks: 3 },
  'order day forced earlier': { wanted: until, on },
  'on hold ignored': { units: 10_000 },
  'lead time beyond life': { leadTimeDays: 40, lifeDays: 30 },
  'no order day': { until },
  'nothing fits the date': { lifeDays: 3 },
  'full target bounded': { units: 20_000, paths: 2_000 },
  'target of zero': {},
  'no order in time': {},
  'no need': {},
  'unit cost from offer': { unitMinor: 0.249 },
  'unit cost unknown': {},
  'life on arrival unlimited': {},
  'setting out of range': { setting: 'serviceTargetPerMille', given: -50, taken: 0 },
  'usual amount from expected uses': { units: 300 },
  'usual amount unknown': { units: 250 },
  'delivery shared': { lines: 3, shareMinor: 230 },
  'looked ahead': { horizonDays: 120, tailDays: 365 },
  'no history': {},
  'short history': { weeks: 3 },
  'level assumed': { usesPerWeek: 0.2 },
  'amount from kit list': { units: 300, visits: 2 },
  'amount assumed': { units: 250, visits: 0 },
  'return rate assumed': { perMille: 850, visits: 3 },
  'return delay assumed': {},
  'booking curve assumed': { sessions: 4 },
  'attendance assumed': { perMille: 900 },
  'weekdays assumed': {},
  'history of predecessor': { item: 'some id', uses: 9, fromDay: 3 },
  'course without kit list': { courses: 1 },
  'artist leaves': { artistId: 'some id', lastDay: 9 },
  'bookings after the last day': { artistId: 'some id', bookings: 1 },
};
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
      'Was voraussichtlich ungenutzt abläuft: etwa 4,2 ml (12,34 €), zuerst am 05.01.2027.',
    );
    const order = { packs: 2, containers: 2, units: 24_000, on: '2026-11-26', priceMinor: 4800 };
    expect(plain(reasonWords(german, { code: 'order', figures: order, message: '' }, of))).toBe(
      '2 Packungen (24 ml) am 26.11.2026 bestellen, für 48,00 €.',
    );
    const needed = { units: 900, sessions: 2.7, booked: 8, until: '2026-12-24' };
    expect(plain(reasonWords(german, { code: 'booked need', figures: needed, message: '' }, of))).toBe(
      'Gebucht bis 24.12.2026: 8 Sitzungen; etwa 3 davon brauchen es, zusammen etwa 0,9 ml.',
    );
    const seldom = { ...needed, units: 70, sessions: 0.28 };
    expect(plain(reasonWords(german, { code: 'booked need', figures: seldom, message: '' }, of))).toBe(
      'Gebucht bis 24.12.2026: 8 Sitzungen; etwa 0,3 davon brauchen es, zusammen etwa 0,07 ml.',
    );
  });

  it('says a share as a share, also where a chance would be in words', () => {
    const all = { share: 1, days95: 6, sessionsPerYear: 6.8, unmetPerYear: 0 };
    const said = reasonWords(german, { code: 'booked in time', figures: all, message: '' }, of);
    expect(plain(said)).toContain('100 %');
    expect(said).not.toContain('sicher');
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
      'Gewählt: nur noch aufbrauchen, 31,75 € im Jahr. Sonst: vorrätig halten (40,00 €), für den Termin bestellen (zu wenige, um nur für Termine zu bestellen).',
    );
  });

  it.each(Object.entries(everyReason))(
    '%s is written from its figures, in both languages',
    (code, figures) => {
      for (const texts of [english, german]) {
        const said = reasonWords(
          texts,
          { code, figures, message: 'the service’s own sentence, EUR 72.00' },
          of,
        );
        expect(said).not.toContain('own sentence');
        expect(said).not.toMatch(/undefined|NaN|null|\bEUR\b|PerMille|Minor/);
        expect(said.trim()).toMatch(/^\S.*\.$/);
      }
    },
  );

  it('is told in general where its figures differ from item to item', () => {
    const assumed = { code: 'lead time assumed', figures: {}, message: 'Pellworm Supply says no lead time' };
    expect(reasonWords(german, assumed, of)).toBe(
      'Lieferanten nennen keine Lieferzeit, und noch keine Bestellung ist angekommen: Gerechnet wird mit einer üblichen.',
    );
    const ofSeveral = {
      code: 'unit cost from offer',
      figures: { unitMinor: 90 },
      message: 'EUR 0.90 a piece',
    };
    expect(reasonWords(english, ofSeveral, { unit: null, currency: 'EUR' })).not.toContain('0.90');
    expect(reasonWords(english, ofSeveral, { unit: 'pieces', currency: 'EUR' })).toContain('€0.90 a piece');
  });

  it('names a setting that is out of range, and writes what it is by its kind', () => {
    const figures = { setting: 'orderCostMinor', given: -500, taken: 0 };
    expect(reasonWords(english, { code: 'setting out of range', figures, message: '' }, of)).toBe(
      'Out of range: the cost of an order is -€5.00, and €0.00 is taken.',
    );
  });

  it('knows every assumption of a look back', () => {
    for (const { code, figures, message } of replayAssumptions({
      paths: 300,
      reviewEveryDays: 7,
      amountsAssumed: 2,
    })) {
      const said = reasonWords(german, { code, figures, message }, { unit: null, currency: 'EUR' });
      expect(said, code).not.toBe(message);
    }
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
