import type { MovementView } from '../../../stock/lot-list.views.js';

/** Signed; what is measured in volume is an estimate. */
export interface Amount {
  pieces: number;
  microlitres: number;
}

/**
 * What was on hand of a lot after each of its movements.
 * @param movements the latest first, none left out between them
 * @param onHand after the latest of them
 */
export function runningTotals<Movement extends Pick<MovementView, 'pieces' | 'microlitres'>>(
  movements: readonly Movement[],
  onHand: Amount,
): { movement: Movement; after: Amount }[] {
  let after = onHand;
  return movements.map((movement) => {
    const line = { movement, after };
    after = {
      pieces: after.pieces - movement.pieces,
      microlitres: after.microlitres - movement.microlitres,
    };
    return line;
  });
}

/** The sum of amounts, such as the terms of a mass balance. */
export function sumOf(amounts: readonly Amount[]): Amount {
  return amounts.reduce<Amount>(
    (sum, { pieces, microlitres }) => ({
      pieces: sum.pieces + pieces,
      microlitres: sum.microlitres + microlitres,
    }),
    { pieces: 0, microlitres: 0 },
  );
}
