import type { Snapshot } from '../../platform/database/snapshot.js';
import { ContainerFacts } from '../../stock/container-facts.service.js';
import { StandingHolds } from '../../stock/standing-holds.service.js';
import type { Findings } from './findings.store.js';

interface Moved {
  product_id: string;
  pieces: number;
  microlitres: number;
}

/** What the ledger alone says is here, by product. What is finished or discarded is here no more. */
const movedByProduct = `SELECT lot.product_id, sum(movement.pieces) AS pieces, sum(movement.microlitres) AS microlitres
  FROM movement
  JOIN container ON container.studio_id = movement.studio_id AND container.id = movement.container_id
  JOIN lot ON lot.studio_id = movement.studio_id AND lot.id = movement.lot_id
  WHERE movement.studio_id = $1 AND container.state NOT IN ('finished', 'discarded')
  GROUP BY lot.product_id ORDER BY lot.product_id`;

/**
 * Levels are never stored: the service adds them up from containers and balances whenever it is asked. Here they are
 * added up from what it loads for that and from the ledger alone, and must come to the same, product by product; those
 * of a configuration are the sums of its products.
 * @returns how many products were compared
 */
export async function checkLevels(snapshot: Snapshot, studioId: string, findings: Findings): Promise<number> {
  const facts = await new ContainerFacts(new StandingHolds()).load(snapshot.read, studioId, { all: true });
  const shown = new Map<string, { pieces: number; microlitres: number }>();
  for (const { productId, pieces, microlitres } of facts) {
    const sum = shown.get(productId) ?? { pieces: 0, microlitres: 0 };
    shown.set(productId, { pieces: sum.pieces + pieces, microlitres: sum.microlitres + microlitres });
  }
  const moved = new Map(
    (await snapshot.read<Moved>(movedByProduct, [studioId])).map((row) => [row.product_id, row]),
  );
  const productIds = [...new Set([...shown.keys(), ...moved.keys()])].sort();
  for (const productId of productIds) {
    const here = shown.get(productId) ?? { pieces: 0, microlitres: 0 };
    const { pieces, microlitres } = moved.get(productId) ?? { pieces: 0, microlitres: 0 };
    if (here.pieces === pieces && here.microlitres === microlitres) continue;
    await findings.add(
      { check: 'level', studioId, table: 'product', id: productId },
      `Of product ${productId} studio ${studioId} shows ${here.pieces} pieces and ${here.microlitres} µL on hand; the ledger comes to ${pieces} and ${microlitres}.`,
    );
  }
  return productIds.length;
}
