import { describe, expect, it } from 'vitest';
import { itemFacts, offerOf, type SampleItem, sealed } from '../../../tests/support/planning-samples.js';
import type { DecisionNote } from './decision-notes.js';
import type { Reason } from './explanation.js';
import { amount, basketText, lineSentence, money, noteText, reasonText } from './explanation-words.js';
import { decideItem } from './item-decision.js';

const pieces = { unit: 'pieces', currency: 'EUR' } as const;
const drops = { unit: 'microlitres', currency: 'EUR' } as const;
const sentence = (sample: SampleItem) =>
  lineSentence(decideItem(itemFacts(sample)), sample.unit === 'microlitres' ? drops : pieces);

describe('amounts and money', () => {
  it.each([
    [1, pieces, '1 piece'],
    [0, pieces, '0 pieces'],
    [0.4, pieces, '0.4 pieces'],
    [12.6, pieces, '13 pieces'],
    [1_234, pieces, '1,234 pieces'],
    [50, drops, '0.05 ml'],
    [500, drops, '0.5 ml'],
    [3_460, drops, '3.5 ml'],
    [15_000, drops, '15 ml'],
    [250_400, drops, '250 ml'],
  ])('says %s as %o', (units, wording, said) => expect(amount(units, wording)).toBe(said));

  it('says money with the digits of its currency', () => {
    expect(money(123_450, { currency: 'EUR' })).toBe('EUR 1,234.50');
    expect(money(1_234.4, { currency: 'JPY' })).toBe('JPY 1,234');
    expect(money(-0.2, { currency: 'EUR' })).toBe('EUR 0.00');
  });
});

describe('reasons', () => {
  it.each<[Reason, string]>([
    [
      { code: 'booked need', units: 4, sessions: 0.93, booked: 1, until: '2026-12-23' },
      '1 booked session until 23 December 2026 needs about 4 pieces.',
    ],
    [
      { code: 'booked need', units: 14, sessions: 4.6, booked: 5, until: '2026-12-23' },
      '5 booked sessions until 23 December 2026 need about 14 pieces.',
    ],
    [
      { code: 'booked need', units: 0.6, sessions: 0.28, booked: 8, until: '2026-12-23' },
      'Of 8 sessions booked until 23 December 2026 about 0.3 will take it: 0.6 pieces on average.',
    ],
    [
      { code: 'booked need', units: 0.5, sessions: 0.4, booked: 1, until: '2026-12-23' },
      '1 session that is booked until 23 December 2026 takes it with a chance of 40 %: 0.5 pieces on average.',
    ],
    [
      { code: 'touch-ups owed', units: 0.7, sessions: 0.32, until: '2026-12-23' },
      'About 0.3 touch-ups still to be booked until 23 December 2026 need about 0.7 pieces.',
    ],
    [
      { code: 'unforeseen need', units: 0.2, unitsPerWeek: 0.04, until: '2026-12-23' },
      'What nobody has booked yet needs hardly anything: about 0.2 pieces until 23 December 2026.',
    ],
    [
      { code: 'expires', units: 3, wasteMinor: 0.2, firstOn: '2027-02-26' },
      'About 3 pieces of what is here or coming will probably expire unused, the first on 26 February 2027.',
    ],
    [{ code: 'in stock', units: 1, containers: 1, opened: 0 }, '1 piece is here.'],
    [{ code: 'in stock', units: 0, containers: 0, opened: 0 }, 'Nothing usable is here.'],
    [
      { code: 'runs short', chance: 0.97, on: '2026-12-16', until: '2027-03-25' },
      'Without an order it probably runs short around 16 December 2026, and with a chance of 97 % by 25 March 2027.',
    ],
    [
      { code: 'runs short', chance: 0.996, on: '2026-12-16', until: '2027-03-25' },
      'Without an order it runs short, probably around 16 December 2026.',
    ],
    [
      { code: 'runs short', chance: 0.51, on: '2027-03-25', until: '2027-03-25' },
      'Without an order it runs short with a chance of 51 % by 25 March 2027.',
    ],
    [
      { code: 'runs short', chance: 0.2, on: '2026-12-16', until: '2027-03-25' },
      'Without an order it may run short: with a chance of 20 % by 25 March 2027, hardly before 16 December 2026.',
    ],
    [
      { code: 'too late', shortChance: 0.8, arrival: '2026-12-02' },
      'With a chance of 80 % some of it will be missing before the order arrives, probably on 2 December 2026.',
    ],
    [
      { code: 'booked in time', share: 0.94, days95: 6, sessionsPerYear: 6.4, unmetPerYear: 0.38 },
      '94 % of the need is booked at least as early as a delivery takes (6 days for 19 of 20); about 0.4 of 6.4 sessions a year would go without, which is in the cost.',
    ],
    [
      { code: 'lead time', typicalDays: 1, days95: 8 },
      'A delivery usually takes 1 day; 19 of 20 take no more than 8 days.',
    ],
    [
      { code: 'why not less', packs: 2, moreMinor: 340.4, unmetUnits: 3, unmetUnitsMore: 1.5 },
      '2 packs only would cost EUR 3.40 more, with 1.5 pieces more missing.',
    ],
    [
      { code: 'why not more', packs: 1, moreMinor: 0.3, wasteUnits: 0, wasteUnitsMore: 0 },
      '1 pack would cost about the same.',
    ],
    [{ code: 'on hold', units: 1 }, '1 piece on hold is not counted.'],
  ])('%o', (reason, said) => expect(reasonText(reason, pieces)).toBe(said));

  it('says containers where there are bottles', () => {
    expect(reasonText({ code: 'in stock', units: 19_000, containers: 2, opened: 1 }, drops)).toBe(
      '19 ml in 2 containers, 1 opened are here.',
    );
  });

  it('says who chose how an item is kept, and what the others cost', () => {
    const reason: Reason = {
      code: 'range',
      choice: 'let run out',
      chosenBy: 'manager',
      costPerYearMinor: 2_500,
      otherwise: [
        { choice: 'keep in stock', costPerYearMinor: 4_010, possible: true },
        { choice: 'order for the appointment', costPerYearMinor: 2_400, possible: false },
      ],
    };
    expect(reasonText(reason, drops)).toBe(
      'Letting it run out was chosen: EUR 25.00 a year (keeping it in stock EUR 40.10, ordering it for the appointment is not possible, since nobody books early enough).',
    );
  });
});

it('says what a basket made of an order', () => {
  expect(basketText({ packs: 9, on: '2026-12-08' }, { packs: 10, on: '2026-11-26' })).toBe(
    'It is ordered together with other products of the supplier, 10 packs on 26 November 2026; by itself it would be 9 packs on 8 December 2026, with which the following compares.',
  );
  expect(basketText({ packs: 0, on: null }, { packs: 1, on: '2026-11-26' })).toBe(
    'It is ordered together with other products of the supplier, 1 pack on 26 November 2026; by itself it would be nothing.',
  );
});

describe('the sentence of a line', () => {
  it('says what to order today, why, and how long it lasts', () => {
    expect(sentence({ usesPerWeek: 21, batches: [sealed(20, 1)] })).toMatch(
      /^Order \d+ packs \(\d+ pieces\) for EUR [\d,.]+ today\. Without an order it runs short, probably around \d+ December 2026\. Once it is here, the stock lasts about \d+ days, until \d+ \w+ 2027\.$/,
    );
  });

  it('says from when to order', () => {
    expect(sentence({ usesPerWeek: 21, batches: [sealed(80, 1)] })).toMatch(
      /^Order \d+ packs \(\d+ pieces\) for EUR [\d,.]+ around \d+ December 2026\./,
    );
  });

  it('says that there is enough', () => {
    expect(sentence({ usesPerWeek: 1, batches: [sealed(200, 1)] })).toBe(
      'There is enough. What is here and coming lasts until 25 March 2027.',
    );
  });

  it('says what expires of what is not ordered', () => {
    expect(sentence({ usesPerWeek: 1, batches: [sealed(200, 1, 115)], days: 240 })).toMatch(
      /About \d+ pieces of what is here or coming will probably expire unused \(EUR [\d.]+\), the first on 21 March 2027\.$/,
    );
  });

  it('says what is missing before the order can come, and how long the stock lasts then', () => {
    const said = sentence({ usesPerWeek: 21, batches: [sealed(3, 1)], paths: 1_000 });
    expect(said).toMatch(/ today\. Without an order it runs short, .*missing before the order arrives, /);
    const [, days] = said.match(/Once it is here, the stock lasts about (\d+) days/) ?? [];
    expect(Number(days)).toBeGreaterThan(20);
  });

  it('says why a shade is ordered for the appointment only', () => {
    const said = sentence({
      usesPerWeek: 0.1,
      settings: { rangeChoice: 'order for the appointment' },
      expected: [],
    });
    expect(said).toMatch(
      /^Order it when somebody is booked for it: .* Ordering it for the appointment was chosen: /,
    );
  });

  it('says that it cannot be ordered', () => {
    expect(sentence({ usesPerWeek: 7, offers: [] })).toMatch(/^It runs short and cannot be ordered: /);
  });

  it('says to let a shade run out, with what each way costs', () => {
    const said = sentence({
      unit: 'microlitres',
      usesPerWeek: 0.02,
      days: 730,
      amounts: { amounts: [500], weights: [1] },
      settings: { shortageCostMinor: 1_000 },
      offers: [offerOf({ packContainers: 1, unitsEach: 10_000, lifeDays: 600 })],
    });
    expect(said).toMatch(
      /^Order no more: let it run out\. Letting it run out costs least: EUR [\d.]+ a year \(/,
    );
  });
});

it('has a sentence for each note, in which every figure is said', () => {
  const notes: DecisionNote[] = [
    {
      code: 'pack exceeds need',
      packUnits: 15_000,
      inDateNeedUnits: 4_000,
      expectedWasteUnits: 11_000,
      wasteMinor: 2_900,
    },
    { code: 'price break taken', fromPacks: 5, savedMinor: 600 },
    { code: 'minimum packs forced', minimumPacks: 3 },
    { code: 'order day forced earlier', wanted: '2026-12-05', on: '2026-12-03' },
    { code: 'on hold ignored', units: 700 },
    { code: 'lead time beyond life', leadTimeDays: 40, lifeDays: 10 },
    { code: 'no order day', until: '2027-03-25' },
    { code: 'nothing fits the date', lifeDays: 2 },
    { code: 'full target bounded', units: 3_000, paths: 2_000 },
    { code: 'target of zero' },
    { code: 'too late', shortChance: 0.4, arrival: '2026-12-09' },
    { code: 'no offer' },
    { code: 'no need' },
  ];
  const said = notes.map((note) => noteText(note, drops));
  for (const text of said) {
    expect(text).toMatch(/^[A-Z0-9].*\.$/);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  }
  expect(said[0]).toBe(
    'The smallest order exceeds the need in date: of 15 ml about 4 ml will be used, 11 ml (EUR 29.00) wasted.',
  );
  expect(said).toContain(
    'With a chance of 40 % some of it will be missing before the order arrives, probably on 9 December 2026.',
  );
});
