import type { OfferView, PackPriceView } from '../../reorder/supply/offers.views.js';
import { majorText, minorUnits } from '../plans/figures/minor-units.js';

/** A price as it is written. */
export interface WrittenPrice {
  fromPacks: string;
  packPrice: string;
}

/** An offer as it is written: numbers and amounts as typed. */
export interface OfferDraft {
  orderCode: string;
  packContainers: string;
  containerPieces: string;
  minimumPacks: string;
  /** JSON of the written prices, so that drafts are compared as texts; the first is from the smallest order on. */
  prices: string;
  lifeOnArrivalDays: string;
  leadTimeDays: string;
}

export const newOffer: OfferDraft = {
  orderCode: '',
  packContainers: '1',
  containerPieces: '1',
  minimumPacks: '1',
  prices: JSON.stringify([{ fromPacks: '', packPrice: '' }] satisfies WrittenPrice[]),
  lifeOnArrivalDays: '',
  leadTimeDays: '',
};

const written = (count: number | null) => (count === null ? '' : String(count));

/**
 * @param currency the studio's; prices in another one have to be written anew
 * @param language in which prices are written
 */
export function draftOfOffer(offer: OfferView, currency: string, language: string): OfferDraft {
  const price = ({ fromPacks, packPriceMinor }: PackPriceView, index: number): WrittenPrice => ({
    fromPacks: index === 0 ? '' : String(fromPacks),
    packPrice: offer.currency === currency ? majorText(packPriceMinor, currency, language) : '',
  });
  return {
    orderCode: offer.orderCode ?? '',
    packContainers: String(offer.packContainers),
    containerPieces: String(offer.containerPieces),
    minimumPacks: String(offer.minimumPacks),
    prices: JSON.stringify(offer.prices.map(price)),
    lifeOnArrivalDays: written(offer.lifeOnArrivalDays),
    leadTimeDays: written(offer.leadTimeDays),
  };
}

export function pricesOf({ prices }: Pick<OfferDraft, 'prices'>): WrittenPrice[] {
  return JSON.parse(prices) as WrittenPrice[];
}

/** As it is handed in; what is no amount of the currency is named instead, as a field of the request. */
export function contentOfOffer(draft: OfferDraft, currency: string) {
  const minimumPacks = Number(draft.minimumPacks);
  const known = (text: string) => (text === '' ? null : Number(text));
  const prices = pricesOf(draft).map(({ fromPacks, packPrice }, index) => ({
    fromPacks: index === 0 ? minimumPacks : Number(fromPacks),
    packPriceMinor: minorUnits(packPrice, currency),
  }));
  const unreadable = prices.flatMap(({ packPriceMinor }, index) =>
    packPriceMinor == null ? [`prices.${index}.packPriceMinor`] : [],
  );
  if (unreadable.length > 0) return { unreadable };
  return {
    content: {
      orderCode: draft.orderCode.trim() === '' ? null : draft.orderCode.trim(),
      packContainers: Number(draft.packContainers),
      containerPieces: Number(draft.containerPieces),
      minimumPacks,
      prices: prices.map(({ fromPacks, packPriceMinor }) => ({
        fromPacks,
        packPriceMinor: packPriceMinor ?? 0,
      })),
      lifeOnArrivalDays: known(draft.lifeOnArrivalDays),
      leadTimeDays: known(draft.leadTimeDays),
    },
  };
}

/**
 * Only what was edited, so that what others changed beside it stays; prices go with the smallest order, from which the first
 * one holds.
 */
export function changeOfOffer<Content extends object>(content: Content, changes: Partial<OfferDraft>) {
  const edited = new Set<string>(Object.keys(changes));
  if (edited.has('minimumPacks')) edited.add('prices');
  return Object.fromEntries(
    Object.entries(content).filter(([field]) => edited.has(field)),
  ) as Partial<Content>;
}
