import { type Batch, NEVER } from '../projection/item-facts.js';

/** One container, or one piece, on the shelf. */
interface Container {
  units: number;
  lastDay: number;
  opened: boolean;
  unitMinor: number;
}

/**
 * A shelf walked through days that really were. First expired, first out, an opened container before a sealed one of the
 * same day. What is needed on a day is taken before what ends that day is thrown away; what is not there is lost.
 */
export class StockWalk {
  private containers: Container[] = [];

  /**
   * @param openedLifeDays days a container may be used after the day it was opened; NEVER when nothing limits it
   * @param unitMinor of what no cost is known of
   */
  constructor(
    private readonly openedLifeDays: number,
    private readonly unitMinor: number,
  ) {}

  /** Puts batches on the shelf; their last days count like those of the walk. */
  add(batches: readonly Batch[]): void {
    for (const { containers, unitsEach, lastDay, opened, costEachMinor } of batches) {
      const unitMinor = costEachMinor === null || unitsEach <= 0 ? this.unitMinor : costEachMinor / unitsEach;
      for (let count = 0; count < containers; count++) {
        if (unitsEach > 0) this.containers.push({ units: unitsEach, lastDay, opened, unitMinor });
      }
    }
    this.containers.sort(
      (one, other) => one.lastDay - other.lastDay || Number(other.opened) - Number(one.opened),
    );
  }

  /** Takes what is needed on a day; gives what was missing. */
  take(day: number, units: number): number {
    let missing = units;
    for (const container of this.containers) {
      if (missing <= 0) break;
      if (container.lastDay < day) continue;
      const taken = Math.min(missing, container.units);
      container.units -= taken;
      missing -= taken;
      // A piece is gone when it is taken; a bottle begins to age.
      if (!container.opened && container.units > 0 && this.openedLifeDays < NEVER) {
        container.lastDay = Math.min(container.lastDay, day + this.openedLifeDays);
      }
      container.opened = true;
    }
    this.containers = this.containers
      .filter((container) => container.units > 0)
      .sort((one, other) => one.lastDay - other.lastDay || Number(other.opened) - Number(one.opened));
    return missing;
  }

  /** Throws away what ends on a day. */
  discard(day: number): { units: number; minor: number } {
    let units = 0;
    let minor = 0;
    for (const container of this.containers) {
      if (container.lastDay > day) continue;
      units += container.units;
      minor += container.units * container.unitMinor;
    }
    this.containers = this.containers.filter(({ lastDay }) => lastDay > day);
    return { units, minor };
  }

  get units(): number {
    return this.containers.reduce((sum, container) => sum + container.units, 0);
  }

  /** What is here, with last days counted from a day. */
  batches(day: number): Batch[] {
    const batches = new Map<string, Batch>();
    for (const { units, lastDay, opened, unitMinor } of this.containers) {
      const key = `${units} ${lastDay} ${opened} ${unitMinor}`;
      const known = batches.get(key);
      if (known) known.containers++;
      else {
        batches.set(key, {
          containers: 1,
          unitsEach: units,
          lastDay: lastDay >= NEVER ? NEVER : lastDay - day,
          opened,
          costEachMinor: units * unitMinor,
        });
      }
    }
    return [...batches.values()];
  }
}
