import type { ItemStock } from './item-facts.js';

/** Units that are here and usable, opened ones too, and those that are on the way: what a reorder point is compared with. */
export function stockPosition({ batches, onTheWay }: ItemStock): number {
  let units = 0;
  for (const { containers, unitsEach, lastDay } of batches) if (lastDay >= 0) units += containers * unitsEach;
  for (const { containers, unitsEach } of onTheWay) units += containers * unitsEach;
  return units;
}
