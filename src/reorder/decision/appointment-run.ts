import type { DemandDraws } from '../projection/demand-draws.js';
import { NEVER } from '../projection/item-facts.js';
import { numberOf } from '../projection/random-numbers.js';
import { type KeptContainers, takeUnits } from './kept-containers.js';

/** How an item is ordered for those who are booked. */
export interface AppointmentTerms {
  packContainers: number;
  unitsEach: number;
  minimumPacks: number;
  lifeDays: number;
  openedLifeDays: number;
  /** Share of needs that are known early enough to order for them, and are ordered for. */
  bookedInTime: number;
}

/** What came of it, per path, over all drawn days. */
export interface AppointmentOutcome {
  needs: number;
  usedUnits: number;
  unmetUnits: number;
  unmetNeeds: number;
  wastedUnits: number;
  orders: number;
  packs: number;
}

/**
 * Orders only for a need that is booked, what the shelf does not hold, in whole packs that arrive on its day; what is
 * left of them serves later needs until it expires. A need that nobody booked in time gets what is there.
 */
export function runForAppointments(
  draws: DemandDraws,
  terms: AppointmentTerms,
  paths: number,
): AppointmentOutcome {
  const sum = { needs: 0, usedUnits: 0, unmetUnits: 0, unmetNeeds: 0, wastedUnits: 0, orders: 0, packs: 0 };
  for (let path = 0; path < paths; path++) runPath(draws, terms, path, sum);
  const count = Math.max(1, paths);
  return {
    needs: sum.needs / count,
    usedUnits: sum.usedUnits / count,
    unmetUnits: sum.unmetUnits / count,
    unmetNeeds: sum.unmetNeeds / count,
    wastedUnits: sum.wastedUnits / count,
    orders: sum.orders / count,
    packs: sum.packs / count,
  };
}

function runPath(draws: DemandDraws, terms: AppointmentTerms, path: number, sum: AppointmentOutcome): void {
  const { packContainers, unitsEach, minimumPacks, lifeDays, openedLifeDays, bookedInTime } = terms;
  const packUnits = packContainers * unitsEach;
  let shelf: KeptContainers[] = [];
  const end = draws.offsets[path + 1] ?? 0;
  for (let index = draws.offsets[path] ?? 0; index < end; index++) {
    const day = draws.eventDays[index] ?? 0;
    const need = draws.eventUnits[index] ?? 0;
    shelf = shelf.filter((kept) => {
      if (kept.lastDay >= day) return true;
      sum.wastedUnits += kept.containers * kept.units;
      return false;
    });
    let here = 0;
    for (const { containers, units } of shelf) here += containers * units;
    // The k-th need of a path is booked in time or not under every candidate alike.
    if (here < need && numberOf(draws.seed, path, index - (draws.offsets[path] ?? 0)) < bookedInTime) {
      const packs = Math.max(minimumPacks, Math.ceil((need - here) / packUnits));
      const lastDay = lifeDays >= NEVER ? NEVER : day + lifeDays;
      shelf.push({ containers: packs * packContainers, units: unitsEach, lastDay, opened: false });
      sum.orders += 1;
      sum.packs += packs;
      here += packs * packUnits;
    }
    const used = Math.min(here, need);
    takeUnits(shelf, used, day, openedLifeDays);
    shelf = shelf.filter(({ containers }) => containers > 0);
    sum.needs += 1;
    sum.usedUnits += used;
    sum.unmetUnits += need - used;
    if (used < need) sum.unmetNeeds += 1;
  }
  for (const { containers, units, lastDay } of shelf) {
    if (lastDay < draws.days) sum.wastedUnits += containers * units;
  }
}
