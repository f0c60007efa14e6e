import type {
  AmountDistribution,
  CountComponent,
  DemandModel,
  ExpectedUse,
  UnforeseenUse,
} from '../demand/demand-model.js';
import { AliasTable } from './alias-table.js';
import {
  binomialChances,
  type CountChances,
  CountTable,
  mixedChances,
  negativeBinomialChances,
} from './count-table.js';
import { mix, RandomNumbers } from './random-numbers.js';

/**
 * What one item needs on each of many possible courses of events (paths), drawn once and used for every candidate, so
 * that candidates differ by what they do and not by luck. Path p has the days `eventDays` and the units `eventUnits`
 * from `offsets[p]` up to, not including, `offsets[p + 1]`, by rising day and one a day, each with at least one unit.
 */
export interface DemandDraws {
  paths: number;
  days: number;
  offsets: Int32Array;
  eventDays: Uint16Array;
  eventUnits: Int32Array;
  /** What lead times are drawn from as well: the k-th order of a path has the same luck under every candidate. */
  seed: number;
}

export interface DrawSettings {
  paths: number;
  /** 32 bits; see `seedOfItem`. */
  seed: number;
}

const two32 = 0x1_0000_0000;
const mostDays = 3_660;
const mostPaths = 10_000_000;
/** Of a day of one item; more does not fit where it is counted. */
const mostUnits = 1_000_000_000;

/**
 * Draws a model's needs. The first n paths of a longer draw are the n paths of a shorter one, and what is unforeseen
 * does not change when another use becomes expected.
 *
 * Counts are exact: of a period's uses each is unknown today with the shares the model gives, so that those that are
 * both in the period and unknown are again a negative binomial (or each count thinned); by day they fall as the shares do.
 *
 * @throws RangeError when paths, days or a figure of the model is out of bounds
 */
export function drawDemand(model: DemandModel, { paths, seed }: DrawSettings): DemandDraws {
  const { days } = model;
  if (!(Number.isInteger(days) && days >= 0 && days <= mostDays)) {
    throw new RangeError(
      `Needs of ${days} days were asked for: a whole number of 0 to ${mostDays} is allowed.`,
    );
  }
  if (!(Number.isInteger(paths) && paths >= 1 && paths <= mostPaths)) {
    throw new RangeError(`${paths} paths were asked for: a whole number of 1 to ${mostPaths} is allowed.`);
  }
  const amounts = new Map<AmountDistribution, Amounts>();
  const amountsOf = (distribution: AmountDistribution): Amounts => {
    const known = amounts.get(distribution);
    if (known) return known;
    const made = new Amounts(distribution);
    amounts.set(distribution, made);
    return made;
  };
  const expected = model.expected.map((use) => new ExpectedDraw(use, days, amountsOf(use.amount)));
  const unforeseen = model.unforeseen.map((use) => new UnforeseenDraw(use, days, amountsOf(use.amount)));

  const random = new RandomNumbers();
  const needs = new DayNeeds(days);
  const events = new Events(paths);
  for (let path = 0; path < paths; path++) {
    if (expected.length > 0) {
      random.start(seed, path, 0);
      for (const use of expected) use.draw(random, needs);
    }
    for (let series = 0; series < unforeseen.length; series++) {
      random.start(seed, path, series + 1);
      (unforeseen[series] as UnforeseenDraw).draw(random, needs);
    }
    needs.moveTo(events);
    events.endPath(path);
  }
  return { paths, days, ...events.taken(), seed };
}

/** The seed of one item's draws: its own whatever else is planned, and in whatever order. */
export function seedOfItem(planSeed: number, itemKey: string): number {
  let seed = mix(planSeed);
  for (let index = 0; index < itemKey.length; index++)
    seed = mix(Math.imul(seed, 31) + itemKey.charCodeAt(index));
  return seed;
}

/** What is needed on each day of one path, with a mark on the days that have something. */
class DayNeeds {
  private readonly units: Float64Array;
  private readonly marks: Int32Array;

  constructor(days: number) {
    this.units = new Float64Array(days);
    this.marks = new Int32Array((days + 31) >>> 5);
  }

  add(day: number, units: number): void {
    if (units === 0) return;
    this.units[day] = (this.units[day] as number) + units;
    this.marks[day >>> 5] = (this.marks[day >>> 5] as number) | (1 << (day & 31));
  }

  moveTo(events: Events): void {
    for (let word = 0; word < this.marks.length; word++) {
      let marks = this.marks[word] as number;
      while (marks !== 0) {
        const lowest = marks & -marks;
        const day = (word << 5) + 31 - Math.clz32(lowest);
        events.add(day, Math.min(mostUnits, this.units[day] as number));
        this.units[day] = 0;
        marks ^= lowest;
      }
      this.marks[word] = 0;
    }
  }
}

/** All needs of all paths, in arrays that grow. */
class Events {
  private count = 0;
  private readonly offsets: Int32Array;
  private days: Uint16Array;
  private units: Int32Array;

  constructor(paths: number) {
    this.offsets = new Int32Array(paths + 1);
    this.days = new Uint16Array(paths * 8);
    this.units = new Int32Array(paths * 8);
  }

  add(day: number, units: number): void {
    if (this.count === this.days.length) this.grow();
    this.days[this.count] = day;
    this.units[this.count] = units;
    this.count++;
  }

  endPath(path: number): void {
    this.offsets[path + 1] = this.count;
  }

  taken(): Pick<DemandDraws, 'offsets' | 'eventDays' | 'eventUnits'> {
    return {
      offsets: this.offsets,
      eventDays: this.days.slice(0, this.count),
      eventUnits: this.units.slice(0, this.count),
    };
  }

  private grow(): void {
    const days = new Uint16Array(this.days.length * 2);
    days.set(this.days);
    this.days = days;
    const units = new Int32Array(this.units.length * 2);
    units.set(this.units);
    this.units = units;
  }
}

class Amounts {
  private readonly amounts: Int32Array;
  private readonly table: AliasTable;

  constructor({ amounts, weights }: AmountDistribution) {
    for (const amount of amounts) {
      if (!(Number.isInteger(amount) && amount >= 0 && amount <= mostUnits)) {
        throw new RangeError(`An amount is ${amount}: a whole number of 0 to ${mostUnits} is allowed.`);
      }
    }
    if (amounts.length !== weights.length) {
      throw new RangeError(
        `There are ${amounts.length} amounts and ${weights.length} weights: each needs one.`,
      );
    }
    this.amounts = Int32Array.from(amounts);
    this.table = new AliasTable(weights);
  }

  draw(random: RandomNumbers): number {
    return this.amounts[this.amounts.length === 1 ? 0 : this.table.draw(random)] as number;
  }
}

class ExpectedDraw {
  private readonly chance: number;
  private readonly firstDay: number;
  private readonly lastDay: number;
  private readonly dayTable: AliasTable;

  constructor(
    use: ExpectedUse,
    days: number,
    private readonly amounts: Amounts,
  ) {
    if (!(use.chance >= 0 && use.chance <= 1)) {
      throw new RangeError(`The chance of a use is ${use.chance}: 0 to 1 is allowed.`);
    }
    if (!Number.isInteger(use.firstDay)) {
      throw new RangeError(`The first day of a use is ${use.firstDay}: a whole number is needed.`);
    }
    this.chance = use.chance * two32;
    this.firstDay = use.firstDay;
    this.lastDay = days - 1;
    this.dayTable = new AliasTable(use.dayWeights);
  }

  /** Takes as many random numbers whatever the chance is, so that another chance changes no other use. */
  draw(random: RandomNumbers, needs: DayNeeds): void {
    const comes = random.next() < this.chance;
    const day = this.firstDay + this.dayTable.draw(random);
    const units = this.amounts.draw(random);
    if (comes && day >= 0 && day <= this.lastDay) needs.add(day, units);
  }
}

/** Uses of one period that are not known today. */
interface PeriodDraw {
  firstDay: number;
  dayTable: AliasTable;
  /** By component. */
  counts: CountTable[];
}

class UnforeseenDraw {
  private readonly components: AliasTable;
  private readonly periods: PeriodDraw[] = [];

  constructor(
    { components, periodDays, dayShares, unknownShares }: UnforeseenUse,
    days: number,
    private readonly amounts: Amounts,
  ) {
    if (!(Number.isInteger(periodDays) && periodDays >= 1)) {
      throw new RangeError(`A period has ${periodDays} days: a whole number of at least 1 is allowed.`);
    }
    if (dayShares.length < days || unknownShares.length < days) {
      throw new RangeError(
        `There are shares of ${Math.min(dayShares.length, unknownShares.length)} days: ${days} days are drawn.`,
      );
    }
    this.components = new AliasTable(components.map(({ weight }) => weight));
    const tables = new Map<string, CountTable[]>();
    for (let firstDay = 0; firstDay < days; firstDay += periodDays) {
      const shares = dayShares
        .slice(firstDay, Math.min(days, firstDay + periodDays))
        .map((share, index) => share * (unknownShares[firstDay + index] ?? 0));
      const kept = Math.min(
        1,
        shares.reduce((sum, share) => sum + share, 0),
      );
      if (!(kept >= 0)) throw new RangeError(`The shares of days add up to ${kept}: 0 to 1 is allowed.`);
      if (kept === 0) continue;
      // Periods that differ by rounding only share their tables.
      const key = kept.toFixed(12);
      let counts = tables.get(key);
      if (!counts) {
        counts = components.map((component) => new CountTable(keptCounts(component, kept)));
        tables.set(key, counts);
      }
      this.periods.push({ firstDay, dayTable: new AliasTable(shares), counts });
    }
  }

  draw(random: RandomNumbers, needs: DayNeeds): void {
    const component = this.components.draw(random);
    for (let index = 0; index < this.periods.length; index++) {
      const { firstDay, dayTable, counts } = this.periods[index] as PeriodDraw;
      for (let uses = (counts[component] as CountTable).draw(random); uses > 0; uses--) {
        needs.add(firstDay + dayTable.draw(random), this.amounts.draw(random));
      }
    }
  }
}

/** Of a period's uses each is kept with the given chance; what that makes of a negative binomial is one again. */
function keptCounts(component: CountComponent, kept: number): CountChances {
  if (component.kind === 'negative binomial') {
    return negativeBinomialChances(component.mean * kept, 1 + (component.dispersion - 1) * kept);
  }
  if (component.counts.length === 0)
    throw new RangeError('A bootstrap has no counts: at least one is needed.');
  const weights = new Map<number, number>();
  for (const count of component.counts) weights.set(count, (weights.get(count) ?? 0) + 1);
  return mixedChances(
    [...weights].map(([count, weight]) => ({ weight, counts: binomialChances(count, kept) })),
  );
}
