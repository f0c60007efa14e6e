import { packPriceMinor } from '../supply/pack-cost.js';
import type {
  Basket,
  BasketItem,
  BasketLine,
  BasketReason,
  BasketTerms,
  MinimumChoice,
} from './basket-result.js';
import { figure } from './figure.js';
import { dayOfDate } from './plan-days.js';

/** Lines due no later than so many days after a basket's day may join it. */
const windowDays = 21;

/** A line as it is being put together. */
interface Draft {
  item: BasketItem;
  packs: number;
  reasons: Set<BasketReason>;
  extraMinor: number;
  sparedMinor: number;
}

/** One pack more of a line, or one line more. */
interface Addition {
  item: BasketItem;
  draft: Draft | null;
  packs: number;
  /** What it adds to the goods, and what it costs beyond what is best for the item. */
  priceMinor: number;
  extraMinor: number;
}

/**
 * Puts the orders of each supplier together, one basket a day. Lines due on a later day join when that costs less, all of
 * them together, than the delivery they spare: one that stayed behind would pay for it alone. A minimum order is reached
 * by the packs and lines of least expected extra cost, unless waiting until more is due costs less; free delivery is
 * reached when that costs less than the delivery.
 *
 * @param items each once; those without a day of their own are only taken in where that pays
 * @returns baskets by day, then by supplier
 */
export function planBaskets(terms: readonly BasketTerms[], items: readonly BasketItem[]): Basket[] {
  const bySupplier = new Map<string, BasketItem[]>();
  for (const item of items) {
    const { supplierId } = item.figures;
    const of = bySupplier.get(supplierId);
    if (of) of.push(item);
    else bySupplier.set(supplierId, [item]);
  }
  const baskets: Basket[] = [];
  for (const [supplierId, own] of bySupplier) {
    const ownTerms = terms.find((each) => each.supplierId === supplierId) ?? {
      supplierId,
      minimumOrderMinor: null,
      deliveryCostMinor: 0,
      freeDeliveryFromMinor: null,
    };
    baskets.push(...basketsOfSupplier(ownTerms, own));
  }
  return baskets.sort(
    (left, right) => compare(left.on, right.on) || compare(left.supplierId, right.supplierId),
  );
}

function basketsOfSupplier(terms: BasketTerms, items: readonly BasketItem[]): Basket[] {
  const baskets: Basket[] = [];
  let rest = [...items];
  for (;;) {
    const on = firstDay(rest);
    if (on === null) return baskets;
    const basket = fill(terms, on, rest);
    baskets.push(basket);
    const taken = new Set(basket.lines.map(({ key }) => key));
    rest = rest.filter(({ key }) => !taken.has(key));
  }
}

function firstDay(items: readonly BasketItem[]): string | null {
  let first: string | null = null;
  for (const { on } of items) if (on !== null && (first === null || on < first)) first = on;
  return first;
}

function fill(terms: BasketTerms, on: string, items: readonly BasketItem[]): Basket {
  const drafts = items.filter((item) => item.on === on).map((item) => draftOf(item, 'due', 0, 0));
  const others = items.filter((item) => item.on !== on);
  join(terms, on, drafts, others);
  const minimum = reachMinimum(terms, on, drafts, others);
  reachFreeDelivery(terms, on, drafts, others);

  const goodsMinor = goodsOf(drafts);
  const { freeDeliveryFromMinor } = terms;
  const isFree = freeDeliveryFromMinor !== null && goodsMinor >= freeDeliveryFromMinor;
  const deliveryMinor = isFree ? 0 : terms.deliveryCostMinor;
  return {
    supplierId: terms.supplierId,
    on,
    lines: linesOf(drafts, deliveryMinor),
    goodsMinor,
    deliveryMinor,
    totalMinor: goodsMinor + deliveryMinor,
    minimum,
    freeDelivery:
      freeDeliveryFromMinor === null
        ? null
        : {
            fromMinor: freeDeliveryFromMinor,
            reached: isFree,
            missingMinor: Math.max(0, freeDeliveryFromMinor - goodsMinor),
          },
  };
}

function draftOf(item: BasketItem, reason: BasketReason, extraMinor: number, sparedMinor: number): Draft {
  return { item, packs: item.figures.packs, reasons: new Set([reason]), extraMinor, sparedMinor };
}

/** All lines of a later day join together, or none: only then is its delivery spared. */
function join({ deliveryCostMinor }: BasketTerms, on: string, drafts: Draft[], others: BasketItem[]): void {
  if (deliveryCostMinor <= 0) return;
  const days = new Set<string>();
  for (const { on: own } of others) if (own !== null && dayOfDate(on, own) <= windowDays) days.add(own);
  for (const day of [...days].sort()) {
    const group = others.filter((item) => item.on === day);
    const extras = group.map((item) => (item.fixed ? null : extraOn(item, on)));
    let together = 0;
    let canMove = true;
    for (const extra of extras) {
      if (extra === null) canMove = false;
      else together += extra;
    }
    if (!canMove || together >= deliveryCostMinor) continue;
    for (const [index, item] of group.entries()) {
      drafts.push(draftOf(item, 'shares the delivery', extras[index] ?? 0, deliveryCostMinor / group.length));
      others.splice(others.indexOf(item), 1);
    }
  }
}

function reachMinimum(
  { minimumOrderMinor }: BasketTerms,
  on: string,
  drafts: Draft[],
  others: BasketItem[],
): Basket['minimum'] {
  if (minimumOrderMinor === null || minimumOrderMinor <= 0) {
    return { state: 'none', minimumMinor: null, missingMinor: 0, choices: [] };
  }
  const missingMinor = minimumOrderMinor - goodsOf(drafts);
  if (missingMinor <= 0) {
    return { state: 'reached', minimumMinor: minimumOrderMinor, missingMinor: 0, choices: [] };
  }
  const additions = cheapestAdditions(on, drafts, others, missingMinor);
  const wait = waitFor(on, drafts, others, minimumOrderMinor);
  const addedMinor = additions === null ? null : extraOf(additions);
  if (additions !== null && addedMinor !== null && (wait === null || addedMinor <= wait.extraMinor)) {
    apply(additions, 'reaches the minimum', drafts, others, 0);
    // Where a price break makes the goods cheaper again, what was reckoned pack by pack may fall short.
    const stillMissing = Math.max(0, minimumOrderMinor - goodsOf(drafts));
    const state = stillMissing > 0 ? 'not reached' : 'reached by adding';
    return { state, minimumMinor: minimumOrderMinor, missingMinor: stillMissing, choices: [] };
  }
  const choices: MinimumChoice[] = [{ choice: 'order anyway', goodsMinor: goodsOf(drafts), missingMinor }];
  if (wait !== null) choices.push({ choice: 'wait', until: wait.until, extraMinor: figure(wait.extraMinor) });
  for (const each of additions ?? []) {
    const { item, packs, priceMinor, extraMinor } = each;
    choices.push({ choice: 'add', key: item.key, packs, priceMinor, extraMinor: figure(extraMinor) });
  }
  return { state: 'not reached', minimumMinor: minimumOrderMinor, missingMinor, choices };
}

function reachFreeDelivery(
  { freeDeliveryFromMinor, deliveryCostMinor }: BasketTerms,
  on: string,
  drafts: Draft[],
  others: BasketItem[],
): void {
  if (freeDeliveryFromMinor === null || deliveryCostMinor <= 0) return;
  const missingMinor = freeDeliveryFromMinor - goodsOf(drafts);
  if (missingMinor <= 0) return;
  const additions = cheapestAdditions(on, drafts, others, missingMinor);
  if (additions === null || extraOf(additions) >= deliveryCostMinor) return;
  apply(additions, 'reaches free delivery', drafts, others, deliveryCostMinor);
}

/** What to add so that the goods are worth so much more, at the least extra cost; null: there is not enough to add. */
function cheapestAdditions(
  on: string,
  drafts: readonly Draft[],
  others: readonly BasketItem[],
  missingMinor: number,
): Addition[] | null {
  const possible = possibleAdditions(on, drafts, others);
  const taken: Addition[] = [];
  let missing = missingMinor;
  while (missing > 0) {
    // Of each line only the next pack can be taken.
    const next = nextOfEach(possible, taken);
    const best = next.sort((left, right) => perMissing(left, missing) - perMissing(right, missing))[0];
    if (best === undefined) return null;
    taken.push(best);
    missing -= best.priceMinor;
  }
  // The last ones may have made earlier ones needless, the dearest first.
  for (const each of [...taken].sort((left, right) => right.extraMinor - left.extraMinor)) {
    const isLast = !taken.some((other) => other.item === each.item && other.packs > each.packs);
    if (isLast && each.extraMinor > 0 && missing + each.priceMinor <= 0) {
      taken.splice(taken.indexOf(each), 1);
      missing += each.priceMinor;
    }
  }
  return taken;
}

/** Extra cost for each unit of money that is missing: what goes beyond that counts for nothing. */
function perMissing({ extraMinor, priceMinor }: Addition, missing: number): number {
  const counts = Math.min(priceMinor, missing);
  return counts > 0 ? extraMinor / counts : Number.POSITIVE_INFINITY;
}

function nextOfEach(possible: readonly Addition[], taken: readonly Addition[]): Addition[] {
  const next = new Map<BasketItem, Addition>();
  for (const each of possible) {
    if (each.priceMinor <= 0 || taken.includes(each)) continue;
    const known = next.get(each.item);
    if (known === undefined || each.packs < known.packs) next.set(each.item, each);
  }
  return [...next.values()];
}

function possibleAdditions(on: string, drafts: readonly Draft[], others: readonly BasketItem[]): Addition[] {
  const additions: Addition[] = [];
  for (const draft of drafts) {
    if (!draft.item.fixed) additions.push(...morePacks(draft.item, draft, draft.packs, 0));
  }
  for (const item of others) {
    const extraMinor = item.fixed ? null : extraOn(item, on);
    if (extraMinor === null) continue;
    const { packs, packPrices } = item.figures;
    const priceMinor = packs * packPriceMinor(packPrices, packs);
    additions.push({ item, draft: null, packs, priceMinor, extraMinor: Math.max(0, extraMinor) });
    additions.push(...morePacks(item, null, packs, 0));
  }
  return additions;
}

/** Pack by pack: each costs what it adds to the one before. */
function morePacks(item: BasketItem, draft: Draft | null, from: number, extraSoFar: number): Addition[] {
  const { morePacks: known, packPrices } = item.figures;
  const additions: Addition[] = [];
  let before = { packs: from, extraMinor: extraSoFar };
  for (const { packs, extraMinor } of known) {
    if (packs <= from) {
      if (packs === from) before = { packs, extraMinor };
      continue;
    }
    const priceMinor = priceOf(packPrices, packs) - priceOf(packPrices, before.packs);
    additions.push({
      item,
      draft,
      packs,
      priceMinor,
      extraMinor: Math.max(0, extraMinor - before.extraMinor),
    });
    before = { packs, extraMinor };
  }
  return additions;
}

function priceOf(prices: BasketItem['figures']['packPrices'], packs: number): number {
  return packs * packPriceMinor(prices, packs);
}

function apply(
  additions: readonly Addition[],
  reason: BasketReason,
  drafts: Draft[],
  others: BasketItem[],
  sparedMinor: number,
): void {
  for (const { item, packs, extraMinor } of additions) {
    let draft = drafts.find((each) => each.item === item);
    if (draft === undefined) {
      draft = { item, packs: 0, reasons: new Set(), extraMinor: 0, sparedMinor: 0 };
      drafts.push(draft);
      others.splice(others.indexOf(item), 1);
    }
    draft.packs = Math.max(draft.packs, packs);
    draft.reasons.add(reason);
    draft.extraMinor += extraMinor;
    draft.sparedMinor += sparedMinor / additions.length;
  }
}

/** The first day on which what is due by then reaches the minimum, and what waiting until then costs the lines due now. */
function waitFor(
  on: string,
  drafts: readonly Draft[],
  others: readonly BasketItem[],
  minimumMinor: number,
): { until: string; extraMinor: number } | null {
  let goods = goodsOf(drafts);
  const later = others.filter((item) => item.on !== null && item.on > on);
  later.sort((left, right) => compare(left.on ?? '', right.on ?? ''));
  for (const item of later) {
    goods += priceOf(item.figures.packPrices, item.figures.packs);
    if (goods < minimumMinor || item.on === null) continue;
    let extraMinor = 0;
    for (const draft of drafts) {
      const extra = draft.item.fixed ? null : extraOn(draft.item, item.on);
      if (extra === null) return null;
      extraMinor += Math.max(0, extra);
    }
    return { until: item.on, extraMinor };
  }
  return null;
}

/** What ordering an item on another day costs more than on its own, between known days in proportion; null: not known. */
function extraOn({ figures }: BasketItem, on: string): number | null {
  const known = [...figures.days, ...figures.laterDays];
  let before: (typeof known)[number] | null = null;
  for (const each of known) {
    if (each.on === on) return each.extraMinor;
    if (each.on > on) {
      if (before === null) return null;
      const share = dayOfDate(before.on, on) / dayOfDate(before.on, each.on);
      return before.extraMinor + share * (each.extraMinor - before.extraMinor);
    }
    before = each;
  }
  return null;
}

function linesOf(drafts: readonly Draft[], deliveryMinor: number): BasketLine[] {
  const prices = drafts.map(({ item, packs }) => priceOf(item.figures.packPrices, packs));
  const shares = sharesOf(deliveryMinor, prices);
  return drafts.map(({ item, packs, reasons, extraMinor, sparedMinor }, index) => ({
    key: item.key,
    offerId: item.figures.offerId,
    productId: item.figures.productId,
    packs,
    ownPacks: item.on === null ? 0 : item.figures.packs,
    ownOn: item.on,
    packPriceMinor: packPriceMinor(item.figures.packPrices, packs),
    priceMinor: prices[index] ?? 0,
    deliveryShareMinor: shares[index] ?? 0,
    reasons: [...reasons],
    extraMinor: figure(extraMinor),
    sparedMinor: figure(sparedMinor),
  }));
}

/** Splits whole minor units in proportion, so that the parts add up to it; evenly when nothing has a price. */
export function sharesOf(amount: number, weights: readonly number[]): number[] {
  let sum = 0;
  for (const weight of weights) sum += weight;
  const exact = weights.map((weight) => (sum > 0 ? (amount * weight) / sum : amount / weights.length));
  const shares = exact.map(Math.floor);
  let left = amount;
  for (const share of shares) left -= share;
  const byRemainder = exact
    .map((value, index) => ({ index, remainder: value - Math.floor(value) }))
    .sort((one, other) => other.remainder - one.remainder || one.index - other.index);
  for (const { index } of byRemainder) {
    if (left < 1) break;
    shares[index] = (shares[index] ?? 0) + 1;
    left -= 1;
  }
  return shares;
}

function goodsOf(drafts: readonly Draft[]): number {
  let goods = 0;
  for (const { item, packs } of drafts) goods += priceOf(item.figures.packPrices, packs);
  return goods;
}

function extraOf(additions: readonly Addition[]): number {
  let extra = 0;
  for (const { extraMinor } of additions) extra += extraMinor;
  return extra;
}

function compare(left: string, right: string): number {
  if (left === right) return 0;
  return left < right ? -1 : 1;
}
