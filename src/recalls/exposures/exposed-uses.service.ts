import { Injectable } from '@nestjs/common';
import { placeholders, type Read } from '../../platform/database/database.js';
import { BlendAncestry } from '../../sessions/blend-ancestry.service.js';
import { type LotInUse, lotsInUse } from '../../sessions/lots-in-use.js';
import { recallLots, recallReach } from '../recall-lots.query.js';
import type { TimeAtHand } from './days-at-hand.js';
import { certaintyOf, whyPossible } from './exposure-certainty.js';
import type { ConcernedLotView, ExposedSessionView, ExposedUseView } from './exposures.views.js';
import { type LotName, LotNames } from './lot-names.service.js';

/** A use that was found to expose its client. */
export interface FoundUse {
  id: string;
  /** 1: it was recorded as a lot that is not recalled, on a day on which a recalled one was open. */
  byOpenLot: number;
}

/** The session of a use, as its exposure is told. */
export type UseSession = Omit<ExposedSessionView, 'day' | 'artistName' | 'certainty' | 'reasons' | 'uses'>;

export interface DescribedUse {
  session: UseSession;
  use: ExposedUseView;
}

type UseRow = Omit<
  ExposedUseView,
  'certainty' | 'reasons' | 'amountKnown' | 'through' | 'lots' | 'againstRefusal'
> &
  Omit<UseSession, 'occurredAt'> & {
    againstRefusal: string | null;
    movementId: string | null;
    productId: string;
  };

type Standing = ConcernedLotView['standing'];

/** What of the recall is in a lot. */
interface Reach {
  /** Of the recall's own lots. */
  standings: Map<string, Standing>;
  /** Blends with a lot of the recall in them. */
  blends: Set<string>;
  /** Lots and blends in which an affected lot is. */
  affected: Set<string>;
}

/** Most ids in one question. */
const usesPerRead = 500;

/** Tells of uses that expose their clients what they were, a part at a time. */
export type DescribeUses = (found: readonly FoundUse[]) => Promise<DescribedUse[]>;

/** Tells of exposures what there is to tell: whose, when, what and how much, and which lots of the recall are concerned. */
@Injectable()
export class ExposedUses {
  constructor(
    private readonly ancestry: BlendAncestry,
    private readonly lotNames: LotNames,
  ) {}

  /**
   * What the lots of the recall are is looked up once, so that many parts are told by the same.
   * @returns uses in the order in which they are given
   */
  async describer(
    read: Read,
    studioId: string,
    recallId: string,
    timesAtHand: readonly TimeAtHand[],
  ): Promise<DescribeUses> {
    const reach = await this.reach(read, studioId, recallId);
    const names = new Map<string, LotName>();
    return async (found) => {
      const described: DescribedUse[] = [];
      for (let from = 0; from < found.length; from += usesPerRead) {
        const part = found.slice(from, from + usesPerRead);
        const rows = await this.rows(
          read,
          studioId,
          part.map(({ id }) => id),
        );
        const blended = [...rows.values()].map(({ lotId }) => lotId).filter((id) => reach.blends.has(id));
        const inUse = lotsInUse(await this.ancestry.pouringsInto(studioId, blended, read));
        const uses = part.flatMap(({ id, byOpenLot: flag }) => {
          const row = rows.get(id);
          if (!row) return [];
          const byOpenLot = flag === 1;
          const lots = byOpenLot ? openLotsOf(row, timesAtHand, reach) : lotsWithin(inUse(row), reach);
          return [{ row, lots, byOpenLot }];
        });
        await this.lotNames.learn(
          read,
          studioId,
          uses.flatMap(({ lots }) => lots.map(({ lotId }) => lotId)),
          names,
        );
        for (const { row, lots, byOpenLot } of uses) {
          const named = lots.flatMap((lot) => {
            const name = names.get(lot.lotId);
            return name ? [{ ...name, ...lot }] : [];
          });
          described.push(describedUse(row, named, byOpenLot));
        }
      }
      return described;
    };
  }

  private async reach(read: Read, studioId: string, recallId: string): Promise<Reach> {
    const rows = await read<{ lotId: string; standing: Standing; depth: number }>(
      `WITH RECURSIVE ${recallLots}, ${recallReach}
       SELECT DISTINCT lot_id AS "lotId", standing, depth FROM recall_reach`,
      [studioId, recallId],
    );
    return {
      standings: new Map(
        rows.filter(({ depth }) => depth === 0).map(({ lotId, standing }) => [lotId, standing]),
      ),
      blends: new Set(rows.filter(({ depth }) => depth > 0).map(({ lotId }) => lotId)),
      affected: new Set(rows.filter(({ standing }) => standing === 'affected').map(({ lotId }) => lotId)),
    };
  }

  private async rows(read: Read, studioId: string, ids: readonly string[]): Promise<Map<string, UseRow>> {
    const rows = await read<UseRow>(
      `SELECT session_use.id, session_use.occurred_at AS "occurredAt", session_use.recorded_at AS "recordedAt",
         session_use.lot_id AS "lotId", session_use.container_id AS "containerId",
         session_use.maker_name AS "makerName", session_use.product_name AS "productName", session_use.shade,
         session_use.lot_code AS "lotCode", session_use.use_by AS "useBy", session_use.known_by AS "knownBy",
         session_use.pieces, session_use.drops, session_use.microlitres, session_use.movement_id AS "movementId",
         session_use.mix_id AS "mixId", session_use.against_refusal AS "againstRefusal",
         lot.product_id AS "productId", session.id AS "sessionId", session.client_id AS "clientId",
         client.reference AS "clientReference",
         client.erased_at AS "clientErasedAt", session.visit_kind AS "visitKind",
         session.procedure_id AS "procedureId", procedure.name AS "procedureName",
         session.body_place AS "bodyPlace", session.artist_id AS "artistId", session.recorded_from AS "recordedFrom"
       FROM session_use
         JOIN lot ON lot.studio_id = $1 AND lot.id = session_use.lot_id
         JOIN session ON session.studio_id = $1 AND session.id = session_use.session_id
         JOIN client ON client.studio_id = $1 AND client.id = session_use.client_id
         JOIN procedure ON procedure.studio_id = $1 AND procedure.id = session.procedure_id
       WHERE session_use.studio_id = $1 AND session_use.id IN (${placeholders(ids)})`,
      [studioId, ...ids],
    );
    return new Map(rows.map((row) => [row.id, row]));
  }
}

type Concerned = Pick<ConcernedLotView, 'lotId' | 'standing' | 'as' | 'shareMicrolitres'>;

/** The recalled lots that were in a use. */
function lotsWithin(lots: readonly LotInUse[], { standings }: Reach): Concerned[] {
  return lots.flatMap(({ lotId, direct, shareMicrolitres }) => {
    const standing = standings.get(lotId);
    return standing === undefined
      ? []
      : [{ lotId, standing, as: direct ? 'itself' : 'house blend', shareMicrolitres }];
  });
}

/** The recalled lots that were open when something of their product was picked from a list. */
function openLotsOf(
  { productId, occurredAt }: UseRow,
  times: readonly TimeAtHand[],
  { affected }: Reach,
): Concerned[] {
  return times
    .filter((time) => time.productId === productId && time.from <= occurredAt && occurredAt < time.before)
    .map(({ lotId }) => ({
      lotId,
      standing: affected.has(lotId) ? 'affected' : 'undecided',
      as: 'another open lot that day',
      shareMicrolitres: null,
    }));
}

function describedUse(row: UseRow, lots: ConcernedLotView[], byOpenLot: boolean): DescribedUse {
  const { sessionId, clientId, clientReference, clientErasedAt, visitKind, procedureId, ...withoutSession } =
    row;
  const {
    procedureName,
    bodyPlace,
    artistId,
    recordedFrom,
    movementId,
    againstRefusal,
    productId: _,
    ...use
  } = withoutSession;
  const reasons = whyPossible({
    affected: lots.some(({ standing }) => standing === 'affected'),
    picked: use.knownBy === 'picked from a list',
    byOpenLot,
  });
  return {
    session: {
      ...{ sessionId, clientId, clientReference, clientErasedAt, occurredAt: row.occurredAt },
      ...{ visitKind, procedureId, procedureName, bodyPlace, artistId, recordedFrom },
    },
    use: {
      ...use,
      certainty: certaintyOf(reasons),
      reasons,
      amountKnown: movementId !== null,
      through: [
        ...(use.mixId === null ? [] : (['mix'] as const)),
        ...(lots.some((lot) => lot.as === 'house blend') ? (['house blend'] as const) : []),
      ],
      againstRefusal: againstRefusal === null ? null : (JSON.parse(againstRefusal) as string[]),
      lots,
    },
  };
}
