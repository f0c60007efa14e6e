import type {
  AmountDistribution,
  CountComponent,
  DemandModel,
  ExpectedUse,
  UnforeseenUse,
} from '../demand/demand-model.js';
import { AliasTable } from './alias-table.js';
import { type CountChances, negativeBinomialChances, PeriodCounts, sampleChances } from './period-counts.js';
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
const roundingOfShares = 1e-6;
/** Of a day of one item; more does not fit where it is counted. */
const mostUnits = 1_000_000_000;

/**
 * Draws a model's needs. The first n paths of a longer draw are the n paths of a shorter one, and what is unforeseen
 * does not change when another use becomes expected.
 *
 * Counts of a period come as their distribution says; each use then falls on one of its days and is unknown today, or
 * is left out, as the shares say.
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
  const unforeseen = model.unforeseen.map((use) => new UnforeseenDraw(use, days, use.amount));

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

function checkAmounts({ amounts, weights }: AmountDistribution): void {
  for (const amount of amounts) {
    if (!(Number.isInteger(amount) && amount >= 0 && amount <= mostUnits)) {
      throw new RangeError(`An amount is ${amount}: a whole number of 0 to ${mostUnits} is allowed.`);
    }
  }
  if (amounts.length === 0 || amounts.length !== weights.length) {
    throw new RangeError(
      `There are ${amounts.length} amounts and ${weights.length} weights: at least one is needed, each with a weight.`,
    );
  }
}

class Amounts {
  private readonly amounts: Int32Array;
  private readonly table: AliasTable;

  constructor(distribution: AmountDistribution) {
    checkAmounts(distribution);
    this.amounts = Int32Array.from(distribution.amounts);
    this.table = new AliasTable(distribution.weights);
  }

  draw(random: RandomNumbers): number {
    return this.amounts[this.table.draw(random)] as number;
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

  /** Takes as much luck whatever the chance is, so that another chance changes no other use. */
  draw(random: RandomNumbers, needs: DayNeeds): void {
    const comes = random.next() < this.chance;
    const day = this.firstDay + this.dayTable.draw(random);
    const units = this.amounts.draw(random);
    if (comes && day >= 0 && day <= this.lastDay) needs.add(day, units);
  }
}

class UnforeseenDraw {
  private readonly components: AliasTable;
  private readonly counts: PeriodCounts[];
  /** Of each period: on which of its days a use falls and what it takes; the last is that it is known, or too late. */
  private readonly useTables: AliasTable[] = [];
  private readonly useDays: Int32Array;
  private readonly useUnits: Int32Array;
  private readonly periodDays: number;

  constructor(
    { components, periodDays, dayShares, unknownShares }: UnforeseenUse,
    days: number,
    distribution: AmountDistribution,
  ) {
    checkAmounts(distribution);
    const { amounts, weights } = distribution;
    if (!(Number.isInteger(periodDays) && periodDays >= 1)) {
      throw new RangeError(`A period has ${periodDays} days: a whole number of at least 1 is allowed.`);
    }
    if (dayShares.length < days || unknownShares.length < days) {
      const known = Math.min(dayShares.length, unknownShares.length);
      throw new RangeError(`There are shares of ${known} days: ${days} days are drawn.`);
    }
    this.periodDays = periodDays;
    this.components = new AliasTable(components.map(({ weight }) => weight));
    this.counts = components.map((component) => new PeriodCounts(countChances(component)));
    const dayIndices = Array.from({ length: periodDays }, (_, index) => index);
    this.useDays = Int32Array.from(dayIndices.flatMap((index) => amounts.map(() => index)));
    this.useUnits = Int32Array.from(dayIndices.flatMap(() => amounts));
    const whole = weights.reduce((sum, weight) => sum + weight, 0);
    for (let firstDay = 0; firstDay < days; firstDay += periodDays) {
      const shares = Array.from({ length: periodDays }, (_, index) => {
        const day = firstDay + index;
        return day < days ? (dayShares[day] as number) * (unknownShares[day] as number) : 0;
      });
      const drawn = shares.reduce((sum, share) => sum + share, 0);
      if (!(drawn <= 1 + roundingOfShares)) {
        throw new RangeError(`The shares of a period's days add up to ${drawn}: 0 to 1 is allowed.`);
      }
      const uses = shares.flatMap((share) => weights.map((weight) => (share * weight) / whole));
      this.useTables.push(new AliasTable([...uses, Math.max(0, 1 - drawn)]));
    }
  }

  draw(random: RandomNumbers, needs: DayNeeds): void {
    const counts = this.counts[this.components.draw(random)] as PeriodCounts;
    const { periodDays, useTables, useDays, useUnits } = this;
    for (let period = counts.emptyPeriods(random); period < useTables.length; period++) {
      const useTable = useTables[period] as AliasTable;
      for (let uses = counts.uses(random); uses > 0; uses--) {
        const use = useTable.draw(random);
        if (use === useDays.length) continue;
        needs.add(period * periodDays + (useDays[use] as number), useUnits[use] as number);
      }
      period += counts.emptyPeriods(random);
    }
  }
}

function countChances(component: CountComponent): CountChances {
  if (component.kind === 'empirical') return sampleChances(component.counts);
  return negativeBinomialChances(component.mean, component.dispersion);
}
