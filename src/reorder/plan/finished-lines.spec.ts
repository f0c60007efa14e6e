import { expect, it } from 'vitest';
import type { ExpectedCost, ItemDecision } from '../decision/item-decision-result.js';
import { type DecidedItem, finishedLines } from './finished-lines.js';

const cost = (totalMinor: number) => ({ totalMinor }) as ExpectedCost;
const supplier = {
  supplierId: 'quill',
  minimumOrderMinor: null,
  deliveryCostMinor: 900,
  freeDeliveryFromMinor: null,
};

function decided(name: string, stake: number, own: Partial<ItemDecision>): DecidedItem {
  return {
    name,
    label: name,
    decision: {
      decision: 'enough',
      order: null,
      offers: [],
      basketFigures: null,
      costs: { chosen: cost(0), nothing: cost(stake), neighbours: [] },
      ...own,
    } as unknown as ItemDecision,
  };
}

function due(name: string, on: string, stake: number, extraMinor: number): DecidedItem {
  const offer = { offerId: `offer of ${name}`, productId: name, supplierId: 'quill' };
  return decided(name, stake, {
    decision: on === '2026-03-02' ? 'order now' : 'order later',
    order: {
      ...offer,
      packs: 2,
      containers: 2,
      units: 20,
      packPriceMinor: 1_000,
      priceMinor: 2_000,
      on,
      arrival: { likely: on, late: on },
    },
    basketFigures: {
      ...offer,
      packs: 2,
      packPrices: [{ fromPacks: 1, packPriceMinor: 1_000 }],
      days: [...new Set(['2026-03-02', on])].map((day) => ({
        on: day,
        extraMinor: day === on ? 0 : extraMinor,
      })),
      laterDays: [],
      morePacks: [],
    },
  });
}

it('orders together what is due soon when that costs less than another delivery, and numbers lines by what is at stake', () => {
  const items = [
    due('needle', '2026-03-02', 500, 0),
    due('umber', '2026-03-09', 9_000, 50),
    due('ochre', '2026-05-04', 20, 5_000),
    decided('film', 0, {}),
  ];
  const { lines, baskets } = finishedLines(items, [supplier], '2026-03-02', true);
  expect(
    lines.map(({ lineNumber, name, decision, orderOn, packs }) => [
      lineNumber,
      name,
      decision,
      orderOn,
      packs,
    ]),
  ).toEqual([
    [1, 'umber', 'order now', '2026-03-02', 2],
    [2, 'needle', 'order now', '2026-03-02', 2],
    [3, 'ochre', 'order later', '2026-05-04', 2],
    [4, 'film', 'enough', null, 0],
  ]);
  expect(baskets.map(({ on, lines: own }) => [on, own.map(({ key }) => key).sort()])).toEqual([
    ['2026-03-02', ['needle', 'umber']],
    ['2026-05-04', ['ochre']],
  ]);
});

it('leaves an item that is looked at alone as it is', () => {
  const { lines, baskets } = finishedLines(
    [due('umber', '2026-03-09', 1, 0)],
    [supplier],
    '2026-03-02',
    false,
  );
  expect(baskets).toEqual([]);
  expect(lines).toMatchObject([
    { decision: 'order later', orderOn: '2026-03-09', supplierId: 'quill', packs: 2 },
  ]);
});
