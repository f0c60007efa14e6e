import { packPriceMinor } from '../supply/pack-cost.js';
import type { PackPrice } from '../supply/pack-price.js';
import type { DemandDraws } from './demand-draws.js';
import { type CostRates, type ItemStock, NEVER, type OrderPolicy, type Replenishment } from './item-facts.js';
import { LuckyDays } from './lucky-days.js';
import type { Outcome } from './outcome.js';
import { PathStock } from './path-stock.js';
import { numberOf } from './random-numbers.js';
import { checkPolicy, checkSimulation } from './simulation-bounds.js';
import { Tally } from './tally.js';

/** Orders are placed on days 0 to days − 1; for the tail's days only what is there or coming is used up or spoils. */
export interface Horizon {
  days: number;
  tailDays: number;
}

/** Which paths are tried, from the first up to, not including, the last. */
export interface PathRange {
  from: number;
  to: number;
}

/** Places of the figures of one path. */
const USED = 0;
const UNMET = 1;
const SHORT_DAYS = 2;
const SHORT = 3;
const COVER = 4;
const WASTED = 5;
const WASTED_MINOR = 6;
const WASTED_IN_TAIL = 7;
const ORDERS = 8;
const PACKS = 9;
const PRICE_DIFFERENCE = 10;
const HELD = 11;
const HELD_IN_TAIL = 12;
const AT_HORIZON = 13;
const COMING_AT_HORIZON = 14;
const USED_IN_TAIL = 15;
const UNMET_IN_TAIL = 16;
const AT_END = 17;
const COMING_AT_END = 18;
const COST = 19;
const FIGURES = 20;

/** No order is placed at or below it. */
const NO_POINT = -1;

/**
 * One item's stock on the drawn paths, under one policy after another. A day goes: arrivals, then orders (of no lead
 * time they arrive at once), then needs, in the evening discards. Opened containers are used first, then sealed ones,
 * each by first expiry. What is not there is lost. Orders are placed on order days when what is usable and on the way is
 * at or below the reorder point: the policy's packs, the minimum at least, or as many as lift it above the point. A
 * policy's first order is placed on the first order day on or after its day, whatever is there; the reorder point
 * counts from the day after (from day 0 when there is no first order).
 *
 * A path jumps from need to need; in between it stops only where something arrives, spoils or is ordered.
 */
export class Simulation {
  private readonly days: number;
  private readonly end: number;
  private readonly path: PathStock;
  private readonly tally = new Tally(FIGURES);
  private readonly figures = new Float64Array(FIGURES);
  /** Of each day the next order day, with the day after the last and those beyond as NEVER. */
  private readonly nextOrderDay: Int32Array;
  private readonly leadTime: LuckyDays;
  private readonly prices: readonly PackPrice[];
  private readonly onTheWay: {
    arrival: LuckyDays;
    containers: number;
    unitsEach: number;
    lifeDays: number;
  }[];

  /** What is to arrive, in the order it was sent. */
  private readonly comingDay: Int32Array;
  private readonly comingContainers: Int32Array;
  private readonly comingUnitsEach: Int32Array;
  private readonly comingLifeDays: Int32Array;
  private readonly comingUnitMinor: Float64Array;
  private coming = 0;
  private comingUnits = 0;
  private nextArrival = NEVER;

  /** Of the policy being tried. */
  private point = NO_POINT;
  private laterPacks = 0;
  private firstDay = NEVER;
  private firstPacks = 0;

  /** Of the path being walked. */
  private pathIndex = 0;
  private firstPending = false;
  private nextReview = NEVER;
  /** The day after the last review: there is one a day. */
  private reviewable = 0;
  /** Nothing happens by itself before this day's morning. */
  private nextChange = 0;
  private orders = 0;
  private packs = 0;
  private priceDifference = 0;
  /** Unit-days to the end of the tail of everything that came less everything that went. */
  private held = 0;
  /** Changes of usable stock by evening, when somebody looks at them. */
  private changes: Int32Array | null = null;

  /**
   * @param replenishment null when nothing can be ordered
   * @throws RangeError when the draws end before horizon and tail do, or a fact is no whole number within bounds
   */
  constructor(
    readonly stock: ItemStock,
    readonly replenishment: Replenishment | null,
    readonly draws: DemandDraws,
    readonly rates: CostRates,
    readonly horizon: Horizon,
  ) {
    checkSimulation(stock, replenishment, draws, rates, horizon);
    this.days = horizon.days;
    this.end = horizon.days + horizon.tailDays;
    // No more than one order a day is placed.
    const most = stock.onTheWay.length + horizon.days;
    this.path = new PathStock(stock.batches, rates.unitMinor, stock.openedLifeDays, most);
    this.nextOrderDay = new Int32Array(this.days + 2).fill(NEVER);
    for (let day = 0; replenishment && day < this.days; day++) {
      const next = replenishment.nextOrderDay[day] ?? NEVER;
      if (next < this.days) this.nextOrderDay[day] = next;
    }
    this.leadTime = new LuckyDays(replenishment?.leadTime ?? { days: [0], weights: [1] });
    this.prices = [...(replenishment?.prices ?? [])].sort((one, other) => one.fromPacks - other.fromPacks);
    this.onTheWay = stock.onTheWay.map(({ arrival, ...rest }) => ({
      ...rest,
      arrival: new LuckyDays(arrival),
    }));
    this.comingDay = new Int32Array(most);
    this.comingContainers = new Int32Array(most);
    this.comingUnitsEach = new Int32Array(most);
    this.comingLifeDays = new Int32Array(most);
    this.comingUnitMinor = new Float64Array(most);
  }

  /** @throws RangeError when there are no such paths */
  evaluate(policy: OrderPolicy, range: PathRange = { from: 0, to: this.draws.paths }): Outcome {
    if (!(range.from >= 0 && range.from < range.to && range.to <= this.draws.paths)) {
      throw new RangeError(
        `Paths ${range.from} to ${range.to} were asked for: ${this.draws.paths} were drawn, at least one is needed.`,
      );
    }
    this.follow(policy);
    this.tally.start();
    const firstShortCounts = new Int32Array(this.days);
    for (let path = range.from; path < range.to; path++) {
      this.walk(path);
      this.tally.add(this.figures);
      if (this.figures[SHORT] === 1) {
        const day = this.figures[COVER] as number;
        firstShortCounts[day] = (firstShortCounts[day] as number) + 1;
      }
    }
    return this.outcome(range.to - range.from, firstShortCounts);
  }

  /** Usable units of one path on each evening of horizon and tail, after discards. */
  eveningStock(policy: OrderPolicy, path: number, into: Int32Array): void {
    this.follow(policy);
    this.changes = into.fill(0);
    this.walk(path);
    this.changes = null;
    for (let day = 1; day < this.end; day++) {
      into[day] = (into[day] as number) + (into[day - 1] as number);
    }
  }

  private follow(policy: OrderPolicy): void {
    checkPolicy(policy, this.replenishment?.packContainers ?? 1);
    const { first, reorderPointUnits, packs } = policy;
    this.point = this.replenishment ? Math.max(NO_POINT, reorderPointUnits ?? NO_POINT) : NO_POINT;
    this.laterPacks = packs;
    this.firstDay = NEVER;
    this.firstPacks = 0;
    if (first && this.replenishment) {
      this.firstDay = this.nextOrderDay[Math.min(first.day, this.days)] as number;
      this.firstPacks = first.packs;
      if (this.firstDay === NEVER) this.point = NO_POINT;
    }
  }

  private walk(path: number): void {
    const { draws, days, figures } = this;
    const stock = this.path;
    this.startPath(path);
    const eventsEnd = draws.offsets[path + 1] as number;
    let event = draws.offsets[path] as number;
    let used = 0;
    let unmet = 0;
    let shortDays = 0;
    let cover = days;

    for (; event < eventsEnd; event++) {
      const day = draws.eventDays[event] as number;
      if (day >= days) break;
      if (day >= this.nextChange) this.passTo(day, day - 1);
      const need = draws.eventUnits[event] as number;
      const missing = stock.use(day, need);
      this.tookUnits(day, need - missing);
      used += need - missing;
      if (missing > 0) {
        unmet += missing;
        if (shortDays === 0) cover = day;
        shortDays++;
      }
      if (stock.usableUnits + this.comingUnits <= this.point) this.reviewFrom(day + 1);
      if (stock.soonestLastDay < this.nextChange) this.nextChange = stock.soonestLastDay + 1;
    }
    this.passTo(days - 1, days - 1);
    figures[USED] = used;
    figures[UNMET] = unmet;
    figures[SHORT_DAYS] = shortDays;
    figures[SHORT] = shortDays > 0 ? 1 : 0;
    figures[COVER] = cover;
    figures[AT_HORIZON] = stock.usableUnits;
    figures[COMING_AT_HORIZON] = this.comingUnits;
    // What lies there now is held to the end but for what happens later; the rest was held before.
    const heldInHorizon = this.held - stock.usableUnits * (this.end - days);
    const wastedInHorizon = stock.wastedUnits;

    used = 0;
    unmet = 0;
    for (; event < eventsEnd; event++) {
      const day = draws.eventDays[event] as number;
      if (day >= this.end) break;
      if (day >= this.nextChange) this.passTo(day, day - 1);
      const need = draws.eventUnits[event] as number;
      const missing = stock.use(day, need);
      this.tookUnits(day, need - missing);
      used += need - missing;
      unmet += missing;
      if (stock.soonestLastDay < this.nextChange) this.nextChange = stock.soonestLastDay + 1;
    }
    this.passTo(this.end - 1, this.end - 1);
    figures[WASTED] = stock.wastedUnits;
    figures[WASTED_MINOR] = stock.wastedMinor;
    figures[WASTED_IN_TAIL] = stock.wastedUnits - wastedInHorizon;
    figures[ORDERS] = this.orders;
    figures[PACKS] = this.packs;
    figures[PRICE_DIFFERENCE] = this.priceDifference;
    figures[HELD] = heldInHorizon;
    figures[HELD_IN_TAIL] = this.held - heldInHorizon;
    figures[USED_IN_TAIL] = used;
    figures[UNMET_IN_TAIL] = unmet;
    figures[AT_END] = stock.usableUnits;
    figures[COMING_AT_END] = this.comingUnits;
    const { shortageMinor, orderMinor, holdingMinorPerDay } = this.rates;
    figures[COST] =
      stock.wastedMinor +
      shortageMinor * (figures[UNMET] as number) +
      orderMinor * this.orders +
      holdingMinorPerDay * heldInHorizon +
      this.priceDifference;
  }

  private startPath(path: number): void {
    this.path.start();
    this.pathIndex = path;
    this.orders = 0;
    this.packs = 0;
    this.priceDifference = 0;
    this.held = 0;
    this.gaveUnits(0, this.path.usableUnits);
    this.coming = 0;
    this.comingUnits = 0;
    this.nextArrival = NEVER;
    for (let index = 0; index < this.onTheWay.length; index++) {
      const sent = this.onTheWay[index] as (typeof this.onTheWay)[number];
      // Indices below 0 are those of what is on the way, so that orders keep theirs whatever is on the way.
      const arrives = sent.arrival.isCertain
        ? sent.arrival.first
        : sent.arrival.by(numberOf(this.draws.seed, path, -1 - index));
      // What should be here already may come any day: the first to come is today.
      this.send(Math.max(0, arrives), sent.containers, sent.unitsEach, sent.lifeDays, this.rates.unitMinor);
    }
    this.firstPending = this.firstDay !== NEVER;
    this.nextReview = NEVER;
    this.reviewable = 0;
    if (this.firstPending) this.nextReview = this.firstDay;
    else this.reviewFrom(0);
    this.nextChange = Math.min(this.nextArrival, this.nextReview, this.path.soonestLastDay + 1);
  }

  /** Lets happen whatever happens up to a day's morning and an evening before or on that day. */
  private passTo(morning: number, evening: number): void {
    const stock = this.path;
    for (;;) {
      const lastDay = stock.soonestLastDay;
      const next = Math.min(this.nextArrival, this.nextReview);
      if (lastDay < next) {
        if (lastDay > evening) break;
        this.tookUnits(lastDay, stock.discard(lastDay));
        this.reviewFrom(lastDay + 1);
      } else {
        if (next > morning) break;
        if (this.nextArrival === next) this.arrive(next);
        else this.review(next);
      }
    }
    this.nextChange = Math.min(this.nextArrival, this.nextReview, stock.soonestLastDay + 1);
  }

  /** Plans a review when the stock is at or below the reorder point on the morning of this day. */
  private reviewFrom(day: number): void {
    if (this.nextReview !== NEVER || this.firstPending || day > this.days) return;
    if (this.path.usableUnits + this.comingUnits > this.point) return;
    this.nextReview = this.nextOrderDay[Math.max(day, this.reviewable)] as number;
    if (this.nextReview < this.nextChange) this.nextChange = this.nextReview;
  }

  private review(day: number): void {
    this.nextReview = NEVER;
    this.reviewable = day + 1;
    if (this.firstPending) {
      this.firstPending = false;
      if (this.firstPacks > 0) this.order(day, this.firstPacks);
      this.reviewFrom(day + 1);
      return;
    }
    const { packContainers, unitsEach } = this.replenishment as Replenishment;
    const below = this.point - this.path.usableUnits - this.comingUnits;
    this.order(day, Math.max(this.laterPacks, Math.floor(below / (packContainers * unitsEach)) + 1));
  }

  private order(day: number, wantedPacks: number): void {
    const { minimumPacks, packContainers, unitsEach, lifeDays } = this.replenishment as Replenishment;
    const packs = Math.max(wantedPacks, minimumPacks);
    const packUnits = packContainers * unitsEach;
    const referenceMinor = this.rates.unitMinor * packUnits;
    const packMinor = this.prices.length > 0 ? packPriceMinor(this.prices, packs) : referenceMinor;
    this.priceDifference += packs * (packMinor - referenceMinor);
    const luck = this.leadTime.isCertain ? 0 : numberOf(this.draws.seed, this.pathIndex, this.orders);
    this.orders++;
    this.packs += packs;
    this.send(
      day + this.leadTime.by(luck),
      packs * packContainers,
      unitsEach,
      lifeDays,
      packMinor / packUnits,
    );
  }

  private send(
    day: number,
    containers: number,
    unitsEach: number,
    lifeDays: number,
    unitMinor: number,
  ): void {
    const at = this.coming++;
    this.comingDay[at] = day;
    this.comingContainers[at] = containers;
    this.comingUnitsEach[at] = unitsEach;
    this.comingLifeDays[at] = lifeDays;
    this.comingUnitMinor[at] = unitMinor;
    this.comingUnits += containers * unitsEach;
    if (day < this.nextArrival) this.nextArrival = day;
  }

  /** Takes in what arrives on a day, in the order it was sent. */
  private arrive(day: number): void {
    let kept = 0;
    this.nextArrival = NEVER;
    for (let index = 0; index < this.coming; index++) {
      const arrives = this.comingDay[index] as number;
      const containers = this.comingContainers[index] as number;
      const unitsEach = this.comingUnitsEach[index] as number;
      const lifeDays = this.comingLifeDays[index] as number;
      const unitMinor = this.comingUnitMinor[index] as number;
      if (arrives === day) {
        this.comingUnits -= containers * unitsEach;
        this.gaveUnits(
          day,
          this.path.arrive(day, containers, unitsEach, Math.min(NEVER, day + lifeDays), unitMinor),
        );
        continue;
      }
      if (arrives < this.nextArrival) this.nextArrival = arrives;
      this.comingDay[kept] = arrives;
      this.comingContainers[kept] = containers;
      this.comingUnitsEach[kept] = unitsEach;
      this.comingLifeDays[kept] = lifeDays;
      this.comingUnitMinor[kept] = unitMinor;
      kept++;
    }
    this.coming = kept;
    // What was past its last day on arrival is neither here nor coming any more.
    this.reviewFrom(day);
  }

  private gaveUnits(day: number, units: number): void {
    this.held += units * (this.end - day);
    if (this.changes) this.changes[day] = (this.changes[day] as number) + units;
  }

  private tookUnits(day: number, units: number): void {
    this.held -= units * (this.end - day);
    if (this.changes) this.changes[day] = (this.changes[day] as number) - units;
  }

  private outcome(paths: number, firstShortCounts: Int32Array): Outcome {
    const { tally } = this;
    return {
      paths,
      usedUnits: tally.of(USED),
      unmetUnits: tally.of(UNMET),
      shortDays: tally.of(SHORT_DAYS),
      short: tally.of(SHORT),
      firstShortCounts,
      daysOfCover: tally.of(COVER),
      wastedUnits: tally.of(WASTED),
      wastedMinor: tally.of(WASTED_MINOR),
      wastedInTailUnits: tally.of(WASTED_IN_TAIL),
      orders: tally.of(ORDERS),
      packs: tally.of(PACKS),
      priceDifferenceMinor: tally.of(PRICE_DIFFERENCE),
      heldUnitDays: tally.of(HELD),
      heldInTailUnitDays: tally.of(HELD_IN_TAIL),
      unitsAtHorizon: tally.of(AT_HORIZON),
      onTheWayAtHorizon: tally.of(COMING_AT_HORIZON),
      usedInTailUnits: tally.of(USED_IN_TAIL),
      unmetInTailUnits: tally.of(UNMET_IN_TAIL),
      unitsAtEnd: tally.of(AT_END),
      onTheWayAtEnd: tally.of(COMING_AT_END),
      costMinor: tally.of(COST),
    };
  }
}
