import { describe, expect, it } from 'vitest';
import { itemFacts, offerOf, type SampleItem, sealed } from '../../../tests/support/planning-samples.js';
import type { DecisionAssumption, DecisionNote } from './decision-notes.js';
import type { Reason } from './explanation.js';
import { amount, assumptionText, lineSentence, money, noteText, reasonText } from './explanation-words.js';
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
      { code: 'booked need', units: 4, sessions: 1, until: '2026-12-23' },
      '1 booked session until 23 December 2026 needs about 4 pieces.',
    ],
    [
      { code: 'booked need', units: 14, sessions: 5.4, until: '2026-12-23' },
      '5 booked sessions until 23 December 2026 need about 14 pieces.',
    ],
    [{ code: 'in stock', units: 1, containers: 1, opened: 0 }, '1 piece is here.'],
    [{ code: 'in stock', units: 0, containers: 0, opened: 0 }, 'Nothing usable is here.'],
    [
      { code: 'runs short', chance: 0.97, on: '2026-12-16', until: '2027-03-25' },
      'Without an order it probably runs short around 16 December 2026 (97 % by 25 March 2027).',
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
      otherwise: [{ choice: 'keep in stock', costPerYearMinor: 4_010 }],
    };
    expect(reasonText(reason, drops)).toBe(
      'Letting it run out was chosen: EUR 25.00 a year (keeping it in stock EUR 40.10).',
    );
  });
});

describe('the sentence of a line', () => {
  it('says what to order today, why, and how long it lasts', () => {
    expect(sentence({ usesPerWeek: 21, batches: [sealed(20, 1)] })).toMatch(
      /^Order \d+ packs \(\d+ pieces\) for EUR [\d,.]+ today\. Without an order it probably runs short around \d+ December 2026 \(100 % by 25 March 2027\)\. With it the stock lasts about \d+ days, until \d+ \w+ 2027\.$/,
    );
  });

  it('says from when to order', () => {
    expect(sentence({ usesPerWeek: 21, batches: [sealed(80, 1)] })).toMatch(
      /^Order \d+ packs \(\d+ pieces\) for EUR [\d,.]+ around \d+ December 2026\./,
    );
  });

  it('says that there is enough', () => {
    expect(sentence({ usesPerWeek: 1, batches: [sealed(200, 1)] })).toBe(
      'There is enough. What is here and coming lasts until 25 March 2027 with a chance of 100 %.',
    );
  });

  it('says what expires of what is not ordered', () => {
    expect(sentence({ usesPerWeek: 1, batches: [sealed(200, 1, 115)], days: 240 })).toMatch(
      /About \d+ pieces of what is here or coming will probably expire unused \(EUR [\d.]+\), the first on 21 March 2027\.$/,
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

it('has a sentence for each note and assumption, in which every figure is said', () => {
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
  const assumptions: DecisionAssumption[] = [
    { code: 'unit cost from offer', unitMinor: 0.2667 },
    { code: 'unit cost unknown' },
    { code: 'life on arrival unlimited' },
    { code: 'setting out of range', setting: 'serviceTargetPerMille', given: 4_000, taken: 1_000 },
    { code: 'usual amount from expected uses', units: 530 },
    { code: 'usual amount unknown' },
    { code: 'delivery shared', lines: 3, shareMinor: 300 },
    { code: 'looked ahead', horizonDays: 120, tailDays: 240 },
  ];
  const said = [
    ...notes.map((note) => noteText(note, drops)),
    ...assumptions.map((assumption) => assumptionText(assumption, drops)),
  ];
  for (const text of said) {
    expect(text).toMatch(/^[A-Z0-9].*\.$/);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  }
  expect(said[0]).toBe(
    'The smallest order exceeds the need in date: of 15 ml about 4 ml will be used, 11 ml (EUR 29.00) wasted.',
  );
  expect(said).toContain(
    'What some of the stock cost is not known: EUR 2.67 a millilitre of the cheapest offer is taken.',
  );
  expect(said).toContain(
    'Even so it runs short with a chance of 40 % before the order arrives, probably on 9 December 2026.',
  );
});
