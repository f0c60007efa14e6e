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
