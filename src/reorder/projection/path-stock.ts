import { type Batch, NEVER } from './item-facts.js';

/** Later than every last day, also than one that never comes: where there is nothing to take. */
const NOTHING = NEVER + 1;

/**
 * What is usable of one item on one path: opened containers by last day, then sealed ones by last day. Those that are
 * there from the beginning never change their order, so that a path begins by setting a few marks back; those that
 * arrive are put in by last day.
 */
export class PathStock {
  usableUnits = 0;
  /** Nothing spoils before the evening of this day; it may be less than the soonest, never more. */
  soonestLastDay = NOTHING;
  wastedUnits = 0;
  wastedMinor = 0;

  /** Opened ones, by last day; the one in use is `open…` below. */
  private readonly openedUnits: Int32Array;
  private readonly openedLastDays: Int32Array;
  private readonly openedUnitMinor: Float64Array;
  private openedNext = 0;

  private openUnits = 0;
  private openLastDay = NOTHING;
  private openUnitMinor = 0;

  /** Sealed ones, by last day, with an end mark; `sealedLeft` are left of the one at `sealedHead`. */
  private readonly sealedContainers: Int32Array;
  private readonly sealedUnitsEach: Int32Array;
  private readonly sealedLastDays: Int32Array;
  private readonly sealedUnitMinor: Float64Array;
  private sealedHead = 0;
  private sealedLeft = 0;

  /** Those that arrived, by last day, with an end mark. */
  private readonly arrivedLeft: Int32Array;
  private readonly arrivedUnitsEach: Int32Array;
  private readonly arrivedLastDays: Int32Array;
  private readonly arrivedUnitMinor: Float64Array;
  private arrivedHead = 0;
  private arrivedEnd = 0;

  private readonly unitsAtStart: number;
  private readonly soonestAtStart: number;
  private readonly wastedUnitsAtStart: number;
  private readonly wastedMinorAtStart: number;

  /**
   * @param unitMinor what a unit costs when its batch does not say
   * @param mostArrivals how many arrivals a path may have
   */
  constructor(
    batches: readonly Batch[],
    unitMinor: number,
    private readonly openedLifeDays: number,
    mostArrivals: number,
  ) {
    const minorOf = ({ costEachMinor, unitsEach }: Batch): number =>
      costEachMinor === null ? unitMinor : costEachMinor / unitsEach;
    const filled = batches.filter(({ containers, unitsEach }) => containers > 0 && unitsEach > 0);
    const past = filled.filter(({ lastDay }) => lastDay < 0);
    const usable = filled
      .filter(({ lastDay }) => lastDay >= 0)
      .map((batch) => ({ ...batch, lastDay: Math.min(batch.lastDay, NEVER) }))
      .sort((one, other) => one.lastDay - other.lastDay);
    const opened = usable
      .filter((batch) => batch.opened)
      .flatMap((batch) => Array.from({ length: batch.containers }, () => batch));
    const sealed = usable.filter((batch) => !batch.opened);
    const units = (some: readonly Batch[]): number =>
      some.reduce((sum, { containers, unitsEach }) => sum + containers * unitsEach, 0);

    this.openedUnits = Int32Array.from(opened, ({ unitsEach }) => unitsEach);
    this.openedLastDays = Int32Array.from(opened, ({ lastDay }) => lastDay);
    this.openedUnitMinor = Float64Array.from(opened, minorOf);
    this.sealedContainers = Int32Array.of(...sealed.map(({ containers }) => containers), 0);
    this.sealedUnitsEach = Int32Array.of(...sealed.map(({ unitsEach }) => unitsEach), 1);
    this.sealedLastDays = Int32Array.of(...sealed.map(({ lastDay }) => lastDay), NOTHING);
    this.sealedUnitMinor = Float64Array.of(...sealed.map(minorOf), 0);
    this.arrivedLeft = new Int32Array(mostArrivals + 1);
    this.arrivedUnitsEach = new Int32Array(mostArrivals + 1);
    this.arrivedLastDays = new Int32Array(mostArrivals + 1);
    this.arrivedUnitMinor = new Float64Array(mostArrivals + 1);
    this.unitsAtStart = units(usable);
    this.soonestAtStart = usable[0]?.lastDay ?? NOTHING;
    this.wastedUnitsAtStart = units(past);
    this.wastedMinorAtStart = past.reduce((sum, batch) => sum + units([batch]) * minorOf(batch), 0);
    this.start();
  }

  /** Sets everything back to the morning of day 0. What was past its last day before is wasted then. */
  start(): void {
    this.usableUnits = this.unitsAtStart;
    this.soonestLastDay = this.soonestAtStart;
    this.wastedUnits = this.wastedUnitsAtStart;
    this.wastedMinor = this.wastedMinorAtStart;
    this.openedNext = 0;
    this.openUnits = 0;
    this.openLastDay = NOTHING;
    this.sealedHead = 0;
    this.sealedLeft = this.sealedContainers[0] as number;
    this.arrivedHead = 0;
    this.arrivedEnd = 0;
    this.arrivedLastDays[0] = NOTHING;
  }

  /**
   * Takes what there is of the units that are needed. Whatever spoiled before the day was discarded already.
   *
   * @returns the units that are not there
   */
  use(day: number, units: number): number {
    let left = units;
    for (;;) {
      if (this.openUnits >= left) {
        this.openUnits -= left;
        this.usableUnits -= units;
        return 0;
      }
      left -= this.openUnits;
      this.openUnits = 0;
      if (this.openedNext < this.openedUnits.length) {
        this.openNextOpened();
        continue;
      }
      const sealedLastDay = this.sealedLastDays[this.sealedHead] as number;
      const arrivedLastDay = this.arrivedLastDays[this.arrivedHead] as number;
      if (sealedLastDay <= arrivedLastDay) {
        if (sealedLastDay === NOTHING) break;
        const each = this.sealedUnitsEach[this.sealedHead] as number;
        const emptied = wholeContainers(left, each, this.sealedLeft);
        left -= emptied * each;
        this.sealedLeft -= emptied;
        if (this.sealedLeft > 0 && left > 0) {
          this.sealedLeft--;
          this.open(each, sealedLastDay, day, this.sealedUnitMinor[this.sealedHead] as number);
        }
        if (this.sealedLeft === 0) this.nextSealed();
      } else {
        const each = this.arrivedUnitsEach[this.arrivedHead] as number;
        const there = this.arrivedLeft[this.arrivedHead] as number;
        const emptied = wholeContainers(left, each, there);
        left -= emptied * each;
        let rest = there - emptied;
        if (rest > 0 && left > 0) {
          rest--;
          this.open(each, arrivedLastDay, day, this.arrivedUnitMinor[this.arrivedHead] as number);
        }
        this.arrivedLeft[this.arrivedHead] = rest;
        if (rest === 0) this.arrivedHead++;
      }
    }
    this.usableUnits -= units - left;
    return left;
  }

  /** Discards on an evening whose last day it was; afterwards `soonestLastDay` is exact. @returns the units discarded */
  discard(evening: number): number {
    const before = this.wastedUnits;
    for (;;) {
      if (this.openUnits > 0) {
        if (this.openLastDay > evening) break;
        this.waste(this.openUnits, this.openUnitMinor);
        this.openUnits = 0;
      }
      if (this.openedNext === this.openedUnits.length) break;
      this.openNextOpened();
    }
    while ((this.sealedLastDays[this.sealedHead] as number) <= evening) {
      const each = this.sealedUnitsEach[this.sealedHead] as number;
      this.waste(this.sealedLeft * each, this.sealedUnitMinor[this.sealedHead] as number);
      this.nextSealed();
    }
    while ((this.arrivedLastDays[this.arrivedHead] as number) <= evening) {
      const units =
        (this.arrivedLeft[this.arrivedHead] as number) * (this.arrivedUnitsEach[this.arrivedHead] as number);
      this.waste(units, this.arrivedUnitMinor[this.arrivedHead] as number);
      this.arrivedHead++;
    }
    this.soonestLastDay = Math.min(
      this.openUnits > 0 ? this.openLastDay : NOTHING,
      this.sealedLastDays[this.sealedHead] as number,
      this.arrivedLastDays[this.arrivedHead] as number,
    );
    const wasted = this.wastedUnits - before;
    this.usableUnits -= wasted;
    return wasted;
  }

  /** Puts in what arrives in the morning of a day; what is past its last day already is wasted. @returns the usable units */
  arrive(day: number, containers: number, unitsEach: number, lastDay: number, unitMinor: number): number {
    const units = containers * unitsEach;
    if (lastDay < day) {
      this.waste(units, unitMinor);
      return 0;
    }
    let at = this.arrivedEnd++;
    this.arrivedLastDays[at + 1] = NOTHING;
    while (at > this.arrivedHead && (this.arrivedLastDays[at - 1] as number) > lastDay) {
      this.arrivedLeft[at] = this.arrivedLeft[at - 1] as number;
      this.arrivedUnitsEach[at] = this.arrivedUnitsEach[at - 1] as number;
      this.arrivedLastDays[at] = this.arrivedLastDays[at - 1] as number;
      this.arrivedUnitMinor[at] = this.arrivedUnitMinor[at - 1] as number;
      at--;
    }
    this.arrivedLeft[at] = containers;
    this.arrivedUnitsEach[at] = unitsEach;
    this.arrivedLastDays[at] = lastDay;
    this.arrivedUnitMinor[at] = unitMinor;
    this.usableUnits += units;
    if (lastDay < this.soonestLastDay) this.soonestLastDay = lastDay;
    return units;
  }

  private open(units: number, lastDay: number, day: number, unitMinor: number): void {
    this.openUnits = units;
    this.openLastDay = Math.min(lastDay, day + this.openedLifeDays);
    this.openUnitMinor = unitMinor;
    if (this.openLastDay < this.soonestLastDay) this.soonestLastDay = this.openLastDay;
  }

  private openNextOpened(): void {
    this.openUnits = this.openedUnits[this.openedNext] as number;
    this.openLastDay = this.openedLastDays[this.openedNext] as number;
    this.openUnitMinor = this.openedUnitMinor[this.openedNext] as number;
    this.openedNext++;
  }

  private nextSealed(): void {
    this.sealedHead++;
    this.sealedLeft = this.sealedContainers[this.sealedHead] as number;
  }

  private waste(units: number, unitMinor: number): void {
    this.wastedUnits += units;
    this.wastedMinor += units * unitMinor;
  }
}

/** Containers that are opened and used up at once. */
function wholeContainers(units: number, unitsEach: number, there: number): number {
  if (units < unitsEach) return 0;
  // Both fit 32 bits: a division of whole numbers.
  const whole = unitsEach === 1 ? units : (units / unitsEach) | 0;
  return Math.min(whole, there);
}
