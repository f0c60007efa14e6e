import type { StockOnHand } from './alert-conditions.js';
import { hasEnded } from './container-transitions.js';
import type { ContainerLifeFacts } from './opened-life.js';

/** One container as the record has it. */
export interface ContainerOnHand {
  containerId: string;
  lotId: string;
  productId: string;
  form: 'bottle' | 'box';
  state: 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';
  openedAt: string | null;
  pieces: number;
  /** Last day of the printed use-by date, ISO `YYYY-MM-DD`. */
  useBy: string | null;
  /** From the label, ISO 8601 duration. */
  openedLife: string | null;
  /** As the studio judged it that sent it here opened; else null. */
  usableThrough: string | null;
  holds: readonly { on: 'container' | 'lot' | 'parent lot' }[];
}

/** What limits a container's life; the studio's assumed opened life is handed in. */
export function containerLife(
  container: Pick<ContainerOnHand, 'form' | 'useBy' | 'openedAt' | 'openedLife' | 'usableThrough'>,
  assumedOpenedLife: string | null,
): ContainerLifeFacts {
  const { form, useBy, openedAt, openedLife, usableThrough } = container;
  // The pieces of a box are sealed one by one, so the box itself has no opened life.
  if (form === 'box') {
    return {
      useByLastDay: useBy,
      openedAt: null,
      openedLife: null,
      assumedOpenedLife: null,
      usableThrough: null,
    };
  }
  return { useByLastDay: useBy, openedAt, openedLife, assumedOpenedLife, usableThrough };
}

/**
 * Gathers containers into what conditions are derived from: the sealed remainder of each lot as one, and one by one what
 * is opened or is held by itself and thus no longer like the rest of its lot. Counted in pieces: a bottle is one.
 */
export function stockOnHand(
  containers: readonly ContainerOnHand[],
  assumedOpenedLife: string | null,
): StockOnHand[] {
  const remainders = new Map<string, StockOnHand>();
  const single: StockOnHand[] = [];
  for (const container of containers) {
    const { state, pieces } = container;
    if (pieces <= 0 || hasEnded(state)) continue;
    const apart =
      state !== 'sealed' || container.holds.some(({ on }) => on === 'container') ? 'container' : 'lot';
    const item = asStock(container, apart, assumedOpenedLife);
    const remainder = apart === 'lot' ? remainders.get(container.lotId) : undefined;
    if (remainder !== undefined) remainder.pieces += pieces;
    else if (apart === 'lot') remainders.set(container.lotId, item);
    else single.push(item);
  }
  return [...remainders.values(), ...single];
}

function asStock(
  container: ContainerOnHand,
  subjectKind: StockOnHand['subjectKind'],
  assumedOpenedLife: string | null,
): StockOnHand {
  return {
    ...containerLife(container, assumedOpenedLife),
    subjectKind,
    subjectId: subjectKind === 'lot' ? container.lotId : container.containerId,
    productId: container.productId,
    pieces: container.pieces,
    held: container.holds.length > 0,
    practice: container.state === 'practice only',
  };
}
