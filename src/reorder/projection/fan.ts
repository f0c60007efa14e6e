import type { OrderPolicy } from './item-facts.js';
import type { Simulation } from './simulate.js';

/** Usable units on each evening of horizon and tail: no more than these with the chance in the name. */
export interface Fan {
  at5: Int32Array;
  at25: Int32Array;
  at50: Int32Array;
  at75: Int32Array;
  at95: Int32Array;
}

const mostPaths = 10_000;

/**
 * How the stock may run under one policy. Needs four bytes a path and day, so it is drawn from the first paths only:
 * 500 of them tell the outer lines within about one in a hundred of their chance.
 *
 * @throws RangeError when paths is no whole number of 1 to what was drawn, 10,000 at most
 */
export function drawFan(simulation: Simulation, policy: OrderPolicy, paths: number): Fan {
  const drawn = Math.min(simulation.draws.paths, mostPaths);
  if (!(Number.isInteger(paths) && paths >= 1 && paths <= drawn)) {
    throw new RangeError(
      `A fan of ${paths} paths was asked for: a whole number of 1 to ${drawn} is allowed.`,
    );
  }
  const days = simulation.horizon.days + simulation.horizon.tailDays;
  const stock = new Int32Array(days);
  const byDay = new Int32Array(days * paths);
  for (let path = 0; path < paths; path++) {
    simulation.eveningStock(policy, path, stock);
    for (let day = 0; day < days; day++) byDay[day * paths + path] = stock[day] as number;
  }
  for (let day = 0; day < days; day++) byDay.subarray(day * paths, (day + 1) * paths).sort();
  const at = (percent: number): Int32Array => {
    // The smallest with so many paths at or below it.
    const place = Math.max(0, Math.ceil((percent * paths) / 100) - 1);
    return Int32Array.from({ length: days }, (_, day) => byDay[day * paths + place] as number);
  };
  return { at5: at(5), at25: at(25), at50: at(50), at75: at(75), at95: at(95) };
}
