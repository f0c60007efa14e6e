import { NEVER } from '../projection/item-facts.js';

/** Equal containers on a shelf. */
export interface KeptContainers {
  containers: number;
  /** In each. */
  units: number;
  lastDay: number;
  opened: boolean;
}

/** Takes units off a shelf: from opened ones first, then from the first to expire; an opened one keeps its own last day. */
export function takeUnits(shelf: KeptContainers[], units: number, day: number, openedLifeDays: number): void {
  shelf.sort((left, right) => Number(right.opened) - Number(left.opened) || left.lastDay - right.lastDay);
  let missing = units;
  for (const kept of [...shelf]) {
    if (missing <= 0) return;
    const whole = Math.min(kept.containers, Math.floor(missing / kept.units));
    kept.containers -= whole;
    missing -= whole * kept.units;
    if (missing <= 0 || kept.containers === 0) continue;
    kept.containers -= 1;
    const opened = openedLifeDays >= NEVER ? NEVER : day + openedLifeDays;
    shelf.push({
      containers: 1,
      units: kept.units - missing,
      lastDay: kept.opened ? kept.lastDay : Math.min(kept.lastDay, opened),
      opened: true,
    });
    missing = 0;
  }
}

/** Even between 0 and 1, the same for the same path and number. */
export function luck(path: number, number: number): number {
  let bits = Math.imul(path + 1, 0x9e37_79b1) ^ Math.imul(number + 1, 0x85eb_ca6b);
  bits = Math.imul(bits ^ (bits >>> 16), 0x7feb_352d);
  bits = Math.imul(bits ^ (bits >>> 15), 0x846c_a68b);
  return ((bits ^ (bits >>> 16)) >>> 0) / 2 ** 32;
}
