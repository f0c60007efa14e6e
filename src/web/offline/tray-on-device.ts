import { type DayFacts } from '../../sessions/day-facts.js';
import { type KitNeed, kitLack } from '../../sessions/kit-lack.js';
import { refusedNow } from '../../sessions/refused-now.js';
import type { KitGapView, TrayLineView, TrayView } from '../../sessions/tray.views.js';
import { trayThing } from '../../sessions/tray-thing.js';

/**
 * A tray as it lies by what this device knows.
 * @param facts with what has happened here since
 * @param at ISO 8601 instant: what may not be used any more says so
 * @returns undefined when the session is not one of the day
 */
export function trayOnDevice(facts: DayFacts, sessionId: string, at: string): TrayView | undefined {
  const session = facts.sessions.find(({ id }) => id === sessionId);
  if (!session) return undefined;
  const lines = facts.lines
    .filter((line) => line.sessionId === sessionId)
    .flatMap((line): TrayLineView[] => {
      const container = facts.containers.find(({ containerId }) => containerId === line.containerId);
      if (!container) return [];
      const thing = trayThing(container, facts.assumedOpenedLife, []);
      const { productId, lotId, containerId, label, labelCode, lotCode, stockForm, isPigment } = thing;
      return [
        {
          ...{ productId, lotId, containerId, label, labelCode, lotCode, stockForm, isPigment },
          ...{ id: line.id, pieces: line.pieces, knownBy: line.knownBy, admittedAt: line.admittedAt },
          state: 'on tray',
          settledAs: null,
          refusedNow: refusedNow(thing, at, facts.timeZone),
        },
      ];
    });
  return {
    sessionId,
    state: session.state,
    version: 0,
    lines,
    lacking: lacking(facts, session.kitItems, lines),
  };
}

function lacking(
  { pools }: DayFacts,
  kitItems: DayFacts['sessions'][number]['kitItems'],
  lines: readonly TrayLineView[],
): KitGapView[] {
  const poolOf = (holds: (pool: DayFacts['pools'][number]) => boolean) => {
    const index = pools.findIndex(holds);
    return index === -1 ? null : String(index);
  };
  const needs = (kitItems ?? []).map(
    ({ productId, configuration, label, quantity: quantityPieces }): KitNeed =>
      productId === null
        ? {
            kind: 'configuration pool',
            poolId: poolOf((pool) => pool.poolKeys.includes(configuration ?? '')) ?? 'none',
            label,
            quantityPieces,
          }
        : { kind: 'product', productId, label, quantityPieces },
  );
  const items = lines.map(({ productId, label, pieces }) => ({
    productId,
    poolId: poolOf((pool) => pool.productIds.includes(productId)),
    label,
    // A bottle on the tray serves its line of the kit list, though no piece of it is reserved.
    quantityPieces: Math.max(1, pieces),
  }));
  return kitLack(needs, items).map((gap) => ({
    productId: gap.kind === 'product' ? gap.productId : null,
    configuration: gap.kind === 'product' ? null : gap.label,
    label: gap.label,
    quantityPieces: gap.quantityPieces,
  }));
}
