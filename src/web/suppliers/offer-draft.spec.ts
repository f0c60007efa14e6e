import { expect, it } from 'vitest';
import type { OfferView } from '../../reorder/supply/offers.views.js';
import { changeOfOffer, contentOfOffer, draftOfOffer, newOffer, pricesOf } from './offer-draft.js';

const offer = {
  orderCode: null,
  packContainers: 2,
  containerPieces: 20,
  minimumPacks: 3,
  prices: [
    { fromPacks: 3, packPriceMinor: 2_950 },
    { fromPacks: 10, packPriceMinor: 2_700 },
  ],
  currency: 'EUR',
  lifeOnArrivalDays: 0,
  leadTimeDays: null,
} as OfferView;

it('hands in what was read, unchanged', () => {
  const {
    orderCode,
    packContainers,
    containerPieces,
    minimumPacks,
    prices,
    lifeOnArrivalDays,
    leadTimeDays,
  } = offer;
  expect(contentOfOffer(draftOfOffer(offer, 'EUR', 'de'), 'EUR')).toEqual({
    content: {
      orderCode,
      packContainers,
      containerPieces,
      minimumPacks,
      prices,
      lifeOnArrivalDays,
      leadTimeDays,
    },
  });
});

it('lets the first price hold from the smallest order on, whatever that becomes', () => {
  const { content } = contentOfOffer({ ...draftOfOffer(offer, 'EUR', 'de'), minimumPacks: '5' }, 'EUR');
  expect(content?.prices[0]).toEqual({ fromPacks: 5, packPriceMinor: 2_950 });
});

it('asks for prices anew when they were in another currency', () => {
  expect(pricesOf(draftOfOffer(offer, 'CHF', 'de')).map(({ packPrice }) => packPrice)).toEqual(['', '']);
});

it('names the prices that are none', () => {
  expect(contentOfOffer(newOffer, 'EUR')).toEqual({ unreadable: ['prices.0.packPriceMinor'] });
  const prices = JSON.stringify([
    { fromPacks: '', packPrice: '10' },
    { fromPacks: '6', packPrice: '9.999' },
  ]);
  expect(contentOfOffer({ ...newOffer, prices }, 'EUR')).toEqual({ unreadable: ['prices.1.packPriceMinor'] });
});

it('sends only what was edited, and prices with the smallest order', () => {
  const content = { orderCode: 'A', minimumPacks: 2, prices: [], leadTimeDays: null };
  expect(changeOfOffer(content, { orderCode: 'A' })).toEqual({ orderCode: 'A' });
  expect(changeOfOffer(content, { minimumPacks: '2' })).toEqual({ minimumPacks: 2, prices: [] });
});
