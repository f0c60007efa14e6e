import { Injectable } from '@nestjs/common';
import type { OpenCondition } from '../../alerts/open-condition.js';
import { productLabel } from '../../catalogue/product-label.js';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { placeholders, type Read } from '../../platform/database/database.js';
import { type ContainerFact, ContainerFacts } from '../../stock/container-facts.service.js';
import { hasEnded } from '../../stock/container-transitions.js';
import { assumedOpenedLife } from '../../stock/container-views.service.js';
import { lastUsableDay } from '../../stock/opened-life.js';
import { containerLife } from '../../stock/stock-on-hand.js';
import { owedTouchUps } from '../owed-touch-ups.query.js';
import {
  type PigmentAtRisk,
  type PigmentHere,
  type TouchUpAtRisk,
  touchUpsAtRisk,
} from './touch-up-prospect.js';

export const mixOutOfDate = 'touch-up mix out of date';

/** The fewest look-ups, with lists that either engine takes. */
const mostSessionsPerQuery = 1_000;

/** One lot that was used in one visit whose touch-up is owed. */
interface UsedRow {
  sessionId: string;
  lotId: string;
  lotCode: string | null;
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
}

/** Finds the touch-ups that cannot be made with the mix of their first visit, in few look-ups however many there are. */
@Injectable()
export class TouchUpProspects {
  constructor(private readonly containerFacts: ContainerFacts) {}

  /** All that stands at an instant. Thinners are left out: another does as well. */
  async standing(
    read: Read,
    { studioId, timeZone }: Pick<Actor, 'studioId' | 'timeZone'>,
    now: string,
  ): Promise<OpenCondition[]> {
    const today = localDay(now, timeZone);
    const owed = await owedTouchUps(read, { studioId, timeZone, from: today });
    const used = await this.used(
      read,
      studioId,
      owed.map(({ sessionId }) => sessionId),
    );
    if (used.length === 0) return [];
    const productIds = [...new Set(used.map(({ productId }) => productId))];
    const containers = await this.containerFacts.load(read, studioId, { productIds });
    const assumed = await assumedOpenedLife(read, studioId);
    const pigments = new Map<string, UsedRow[]>();
    for (const row of used) {
      const ofVisit = pigments.get(row.sessionId);
      if (ofVisit) ofVisit.push(row);
      else pigments.set(row.sessionId, [row]);
    }
    const atRisk = touchUpsAtRisk(
      owed.map((touchUp) => ({ ...touchUp, pigments: pigments.get(touchUp.sessionId) ?? [] })),
      containers.map((container) => pigmentHere(container, assumed, timeZone)),
      today,
      timeZone,
    );
    const lots = new Map(used.map((row) => [row.lotId, row]));
    const procedureOf = new Map(owed.map(({ sessionId, procedureName }) => [sessionId, procedureName]));
    return atRisk.map((touchUp) => conditionOf(touchUp, procedureOf.get(touchUp.sessionId), lots));
  }

  /** The lots of pigment that were used in some visits and not taken back. */
  private async used(read: Read, studioId: string, sessionIds: readonly string[]): Promise<UsedRow[]> {
    const used: UsedRow[] = [];
    for (let start = 0; start < sessionIds.length; start += mostSessionsPerQuery) {
      const batch = sessionIds.slice(start, start + mostSessionsPerQuery);
      const rows = await read<UsedRow>(
        `SELECT DISTINCT session_use.session_id AS "sessionId", lot.id AS "lotId", lot.code AS "lotCode",
           lot.product_id AS "productId", product.name AS "productName", product.shade, maker.name AS "makerName"
         FROM session_use
           JOIN lot ON lot.studio_id = session_use.studio_id AND lot.id = session_use.lot_id
           JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
           JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
         WHERE session_use.studio_id = $1 AND session_use.session_id IN (${placeholders(batch, 2)})
           AND product.kind = 'pigment' AND (product.pigment_role IS NULL OR product.pigment_role <> 'thinner')
           AND NOT EXISTS (SELECT 1 FROM session_use_reversal AS reversal
             WHERE reversal.studio_id = session_use.studio_id AND reversal.use_id = session_use.id)`,
        [studioId, ...batch],
      );
      used.push(...rows);
    }
    return used;
  }
}

function pigmentHere(container: ContainerFact, assumed: string | null, timeZone: string): PigmentHere {
  const { lotId, productId, state, pieces, holds } = container;
  return {
    lotId,
    productId,
    held: holds.length > 0,
    practice: state === 'practice only',
    finished: hasEnded(state) || pieces <= 0,
    end: lastUsableDay({ ...containerLife(container, assumed), timeZone }),
  };
}

function conditionOf(
  { sessionId, opensOn, closesOn, likelyOn, severity, pigments }: TouchUpAtRisk,
  procedure: string | undefined,
  lots: ReadonlyMap<string, UsedRow>,
): OpenCondition {
  const [first, ...others] = pigments;
  const lot = first && lots.get(first.lotId);
  const labelOf = (pigment: PigmentAtRisk) => {
    const known = lots.get(pigment.lotId);
    return known ? productLabel(known) + (known.lotCode === null ? '' : ` lot ${known.lotCode}`) : [];
  };
  return {
    kind: mixOutOfDate,
    subjectKind: 'session',
    subjectId: sessionId,
    severity,
    facts: {
      product: lot?.productName,
      shade: lot?.shade,
      maker: lot?.makerName,
      lotCode: lot?.lotCode,
      lastDay: first?.lastDay,
      because: first?.because,
      anotherLot: first?.anotherLotIsHere ? 'here' : 'none here',
      ...(others.length > 0 && { alsoAtRisk: others.flatMap(labelOf).sort() }),
      procedure,
      opensOn,
      closesOn,
      ...(likelyOn !== closesOn && { plannedOn: likelyOn }),
    },
  };
}
