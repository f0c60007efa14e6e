import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import type { Certainty } from '../exposures/exposure-certainty.js';
import { recallLots, recallReach } from '../recall-lots.query.js';

/** What an artist used of a lot of a recall, or has of it. */
export interface ArtistLot {
  artistId: string;
  lotId: string;
  certainty: Certainty;
  sessions: number;
  /** Instants. */
  firstAt: string | null;
  lastAt: string | null;
  /** Label codes of their own containers of it, or of blends with it, that are still here. */
  containers: string[];
}

/** That a supplier delivered a lot of a recall. */
export interface SupplierLot {
  supplierId: string;
  company: string;
  lotId: string;
  certainty: Certainty;
  occurredAt: string;
  reference: string | null;
  pieces: number;
}

type Standing = 'affected' | 'undecided';
const certaintyOf = (standing: Standing): Certainty => (standing === 'affected' ? 'certain' : 'possible');

/** Who besides clients had to do with the lots of a recall. */
@Injectable()
export class TouchedPeople {
  /** Artists who used a lot of the recall, directly or in a blend, or whose containers hold it. */
  async artists(read: Read, studioId: string, recallId: string): Promise<ArtistLot[]> {
    type Used = {
      artistId: string;
      lotId: string;
      standing: Standing;
      sessions: number;
      firstAt: string;
      lastAt: string;
    };
    type Owned = { artistId: string; lotId: string; standing: Standing; labelCode: string };
    const tables = `WITH RECURSIVE ${recallLots}, ${recallReach},
      reached (lot_id, source_lot_id, standing) AS (
        SELECT DISTINCT lot_id, source_lot_id, standing FROM recall_reach)`;
    const used = await read<Used>(
      `${tables}
       SELECT session.artist_id AS "artistId", reached.source_lot_id AS "lotId", reached.standing,
         count(DISTINCT session.id) AS sessions, min(session_use.occurred_at) AS "firstAt",
         max(session_use.occurred_at) AS "lastAt"
       FROM reached CROSS JOIN session_use CROSS JOIN session
       WHERE session_use.studio_id = $1 AND session_use.lot_id = reached.lot_id
         AND session.studio_id = $1 AND session.id = session_use.session_id
         AND NOT EXISTS (SELECT 1 FROM session_use_reversal WHERE session_use_reversal.studio_id = $1
           AND session_use_reversal.use_id = session_use.id)
       GROUP BY session.artist_id, reached.source_lot_id, reached.standing`,
      [studioId, recallId],
    );
    const owned = await read<Owned>(
      `${tables}
       SELECT container.owner_id AS "artistId", reached.source_lot_id AS "lotId", reached.standing,
         container.label_code AS "labelCode"
       FROM reached CROSS JOIN container
       WHERE container.studio_id = $1 AND container.lot_id = reached.lot_id AND container.owner_id IS NOT NULL
         AND container.ended_at IS NULL
       ORDER BY container.label_code`,
      [studioId, recallId],
    );
    const found = new Map<string, ArtistLot>();
    const keyOf = ({ artistId, lotId }: { artistId: string; lotId: string }) => `${artistId} ${lotId}`;
    for (const { standing, ...row } of used) {
      found.set(keyOf(row), { ...row, certainty: certaintyOf(standing), containers: [] });
    }
    for (const { standing, labelCode, ...row } of owned) {
      const known = found.get(keyOf(row));
      if (known) known.containers.push(labelCode);
      else {
        const nothingUsed = { sessions: 0, firstAt: null, lastAt: null };
        found.set(keyOf(row), {
          ...row,
          ...nothingUsed,
          certainty: certaintyOf(standing),
          containers: [labelCode],
        });
      }
    }
    return [...found.values()];
  }

  /** Deliveries of the recall's lots by suppliers. What came as a sample, by transfer or before the records has none. */
  async suppliers(read: Read, studioId: string, recallId: string): Promise<SupplierLot[]> {
    const rows = await read<Omit<SupplierLot, 'certainty'> & { standing: Standing }>(
      `WITH RECURSIVE ${recallLots}
       SELECT supplier.id AS "supplierId", supplier.name AS company, recall_lots.lot_id AS "lotId",
         recall_lots.standing, delivery.occurred_at AS "occurredAt", delivery.reference,
         delivery_line.quantity_pieces AS pieces
       FROM recall_lots CROSS JOIN delivery_line CROSS JOIN delivery CROSS JOIN supplier
       WHERE recall_lots.standing <> 'not affected'
         AND delivery_line.studio_id = $1 AND delivery_line.lot_id = recall_lots.lot_id
         AND delivery.studio_id = $1 AND delivery.id = delivery_line.delivery_id
         AND supplier.chain_id = delivery.chain_id AND supplier.id = delivery.supplier_id
       ORDER BY supplier.name, supplier.id, delivery.occurred_at, delivery_line.id`,
      [studioId, recallId],
    );
    return rows.map(({ standing, ...row }) => ({ ...row, certainty: certaintyOf(standing) }));
  }
}
