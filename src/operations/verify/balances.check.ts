import type { SqlValue } from '../../platform/database/database.js';
import type { Snapshot } from '../../platform/database/snapshot.js';
import type { Findings } from './findings.store.js';

/** Balances against movements, and each container's balance against its lot; containers without one, and those of none. */
const wrongBalances = `SELECT container.studio_id, container.id, balance.pieces, balance.microlitres,
    coalesce(sums.pieces, 0) AS moved_pieces, coalesce(sums.microlitres, 0) AS moved_microlitres
  FROM container
  LEFT JOIN balance ON balance.studio_id = container.studio_id AND balance.container_id = container.id
    AND balance.lot_id = container.lot_id
  LEFT JOIN (SELECT studio_id, container_id, sum(pieces) AS pieces, sum(microlitres) AS microlitres
             FROM movement GROUP BY studio_id, container_id) AS sums
    ON sums.studio_id = container.studio_id AND sums.container_id = container.id
  WHERE balance.container_id IS NULL
     OR balance.pieces <> coalesce(sums.pieces, 0) OR balance.microlitres <> coalesce(sums.microlitres, 0)
  ORDER BY container.studio_id, container.id`;

const balancesOfNothing = `SELECT studio_id, container_id AS id FROM balance
  WHERE NOT EXISTS (SELECT 1 FROM container
    WHERE container.studio_id = balance.studio_id AND container.id = balance.container_id)
  ORDER BY studio_id, container_id`;

/**
 * Holds every balance against the sum of the movements of its container.
 * @returns how many there are, by studio
 */
export async function checkBalances(snapshot: Snapshot, findings: Findings): Promise<Map<string, number>> {
  const about = (studioId: SqlValue | undefined, id: SqlValue | undefined) => ({
    check: 'balance' as const,
    studioId: String(studioId),
    table: 'balance',
    id: String(id),
  });
  for await (const batch of snapshot.batches(wrongBalances)) {
    for (const [studioId, id, pieces, microlitres, movedPieces, movedMicrolitres] of batch) {
      const container = `container ${id} of ${studioId}`;
      await findings.add(
        about(studioId, id),
        pieces === null
          ? `The ${container} has no balance of its lot.`
          : `The balance of ${container} is ${pieces} pieces and ${microlitres} µL; its movements come to ${movedPieces} and ${movedMicrolitres}.`,
      );
    }
  }
  for await (const batch of snapshot.batches(balancesOfNothing)) {
    for (const [studioId, id] of batch) {
      await findings.add(
        about(studioId, id),
        `There is a balance of container ${id} of ${studioId}, which is not there.`,
      );
    }
  }
  const counted = await snapshot.read<{ studio_id: string; count: number }>(
    'SELECT studio_id, count(*) AS count FROM balance GROUP BY studio_id',
  );
  return new Map(counted.map(({ studio_id, count }) => [studio_id, count]));
}
