import type { Snapshot } from '../../platform/database/snapshot.js';
import type { Findings } from './findings.store.js';

interface Quantity {
  product_id: string;
  pieces: number;
  microlitres: number;
}

// What is finished or discarded is here no more.
const isHere = "container.state NOT IN ('finished', 'discarded')";

/** What is on hand as the service counts it: balances of what is here, by way of their lots and products. */
const shownByProduct = `SELECT lot.product_id, sum(balance.pieces) AS pieces, sum(balance.microlitres) AS microlitres
  FROM container
  JOIN balance ON balance.studio_id = container.studio_id AND balance.container_id = container.id
  JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
  JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
  JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
  WHERE container.studio_id = $1 AND ${isHere}
  GROUP BY lot.product_id ORDER BY lot.product_id`;

/** The same by the ledger alone. */
const movedByProduct = `SELECT lot.product_id, sum(movement.pieces) AS pieces, sum(movement.microlitres) AS microlitres
  FROM movement
  JOIN container ON container.studio_id = movement.studio_id AND container.id = movement.container_id
  JOIN lot ON lot.studio_id = movement.studio_id AND lot.id = movement.lot_id
  WHERE movement.studio_id = $1 AND ${isHere}
  GROUP BY lot.product_id ORDER BY lot.product_id`;

/**
 * Levels are never stored: the service adds them up from containers and balances whenever it is asked. Here they are
 * added up that way and from the ledger alone, and must come to the same, product by product; those of a configuration
 * are the sums of its products. Asks only for columns that every record has, so that an older one can be looked at.
 * @returns how many products were compared
 */
export async function checkLevels(snapshot: Snapshot, studioId: string, findings: Findings): Promise<number> {
  const byProduct = async (sql: string) => {
    const quantities = await snapshot.read<Quantity>(sql, [studioId]);
    return new Map(quantities.map((quantity) => [quantity.product_id, quantity]));
  };
  const shown = await byProduct(shownByProduct);
  const moved = await byProduct(movedByProduct);
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
