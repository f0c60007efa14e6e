import type { OfferView } from '../../reorder/supply/offers.views.js';
import { wordsOfProduct } from '../catalogue/product-words.js';
import { writtenMoney } from '../plans/figures/written-money.js';
import type { Texts } from '../texts/en/english.js';

export function nameOfOffer(offer: OfferView): string {
  return wordsOfProduct({ ...offer, name: offer.productName, notation: null });
}

/** In which packs, and at what price by number of packs. */
export function wordsOfOffer(offer: OfferView, texts: Texts): { packs: string; prices: string } {
  const words = texts.suppliers;
  const { packContainers, containerPieces, minimumPacks, prices, currency, orderCode } = offer;
  const money = (minor: number) => writtenMoney(minor, currency, texts.language);
  return {
    packs: [
      words.packOf(packContainers, containerPieces),
      minimumPacks > 1 && words.atLeast(minimumPacks),
      orderCode !== null && words.orderCodeIs(orderCode),
      offer.leadTimeDays !== null && words.ownTakes(offer.leadTimeDays),
      offer.lifeOnArrivalDays !== null && words.keeps(offer.lifeOnArrivalDays),
    ]
      .filter((part) => part !== false)
      .join(', '),
    prices: prices
      .map(({ fromPacks, packPriceMinor }, index) =>
        index === 0 ? words.aPack(money(packPriceMinor)) : words.aPackFrom(fromPacks, money(packPriceMinor)),
      )
      .join(', '),
  };
}
