import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import type { OpenCondition } from '../../alerts/open-condition.js';
import { productLabel } from '../../catalogue/product-label.js';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import type { Read, SqlValue } from '../../platform/database/database.js';
import { type ContainerFact, ContainerFacts } from '../../stock/container-facts.service.js';
import { hasEnded } from '../../stock/container-transitions.js';
import { assumedOpenedLife } from '../../stock/container-views.service.js';
import { lastUsableDay } from '../../stock/opened-life.js';
import { containerLife } from '../../stock/stock-on-hand.js';
import { visitsWithTouchUp } from '../touch-up-window.js';
import {
  type OwedTouchUp,
  type PigmentAtRisk,
  type PigmentHere,
  type TouchUpAtRisk,
  touchUpsAtRisk,
} from './touch-up-prospect.js';

export const mixOutOfDate = 'touch-up mix out of date';

interface ProcedureRow {
  id: string;
  name: string;
  fromDays: number;
  toDays: number;
}

/** One lot that was used in one visit whose touch-up is owed. */
interface UsedRow {
  sessionId: string;
  procedureId: string;
  completedAt: string;
  plannedStart: string | null;
  lotId: string;
  lotCode: string | null;
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
}

/** Finds the touch-ups that cannot be made with the mix of their first visit, in a fixed number of look-ups. */
@Injectable()
export class TouchUpProspects {
  constructor(private readonly containerFacts: ContainerFacts) {}

  /** All that stands at an instant. Thinners are left out: another does as well. */
  async standing(
    read: Read,
    { studioId, timeZone }: Pick<Actor, 'studioId' | 'timeZone'>,
    now: string,
  ): Promise<OpenCondition[]> {
    const procedures = new Map(
      (await this.procedures(read, studioId)).map((procedure) => [procedure.id, procedure]),
    );
    const used = await this.usedInVisits(read, studioId, [...procedures.values()], now);
    if (used.length === 0) return [];
    const productIds = [...new Set(used.map(({ productId }) => productId))];
    const containers = await this.containerFacts.load(read, studioId, { productIds });
    const assumed = await assumedOpenedLife(read, studioId);
    const atRisk = touchUpsAtRisk(
      owedTouchUps(used, procedures, now, timeZone),
      containers.map((container) => pigmentHere(container, assumed, timeZone)),
      localDay(now, timeZone),
      timeZone,
    );
    const lots = new Map(used.map((row) => [row.lotId, row]));
    const procedureOf = new Map(
      used.map(({ sessionId, procedureId }) => [sessionId, procedures.get(procedureId)?.name]),
    );
    return atRisk.map((touchUp) => conditionOf(touchUp, procedureOf.get(touchUp.sessionId), lots));
  }

  private procedures(read: Read, studioId: string): Promise<ProcedureRow[]> {
    return read<ProcedureRow>(
      `SELECT id, name, touch_up_from_days AS "fromDays", touch_up_to_days AS "toDays"
       FROM procedure WHERE studio_id = $1`,
      [studioId],
    );
  }

  /** Visits are looked for as far back as the window of their procedure may still be open. */
  private usedInVisits(
    read: Read,
    studioId: string,
    procedures: readonly ProcedureRow[],
    now: string,
  ): Promise<UsedRow[]> {
    if (procedures.length === 0) return Promise.resolve([]);
    const parameters: SqlValue[] = [studioId];
    const put = (value: SqlValue) => `$${parameters.push(value)}`;
    const kinds = [...visitsWithTouchUp].map(put).join(', ');
    const longestDays = Math.max(...procedures.map(({ toDays }) => toDays));
    const since = put(daysBefore(now, longestDays));
    return read<UsedRow>(
      `SELECT DISTINCT session.id AS "sessionId", session.procedure_id AS "procedureId",
         session.completed_at AS "completedAt",
         (SELECT min(visit.planned_start) FROM session AS visit
          WHERE visit.studio_id = session.studio_id AND visit.client_id = session.client_id
            AND visit.follows_session_id = session.id AND visit.state = 'planned'
            AND visit.visit_kind = 'touch-up') AS "plannedStart",
         lot.id AS "lotId", lot.code AS "lotCode", lot.product_id AS "productId",
         product.name AS "productName", product.shade, maker.name AS "makerName"
       FROM session
         JOIN client ON client.studio_id = session.studio_id AND client.id = session.client_id
         JOIN session_use ON session_use.studio_id = session.studio_id AND session_use.session_id = session.id
         JOIN lot ON lot.studio_id = session_use.studio_id AND lot.id = session_use.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE session.studio_id = $1 AND session.state = 'completed' AND session.visit_kind IN (${kinds})
         AND session.completed_at >= ${since} AND client.erased_at IS NULL
         AND product.kind = 'pigment' AND (product.pigment_role IS NULL OR product.pigment_role <> 'thinner')
         AND NOT EXISTS (SELECT 1 FROM session_use_reversal AS reversal
           WHERE reversal.studio_id = session_use.studio_id AND reversal.use_id = session_use.id)
         AND NOT EXISTS (SELECT 1 FROM session AS visit
           WHERE visit.studio_id = session.studio_id AND visit.client_id = session.client_id
             AND visit.follows_session_id = session.id AND visit.state IN ('in setup', 'completed'))`,
      parameters,
    );
  }
}

/** A day more than the number says, since the studio's days begin at other instants. */
function daysBefore(now: string, days: number): string {
  const then = Temporal.Instant.from(now).subtract({ hours: 24 * (days + 2) });
  return then.toString({ fractionalSecondDigits: 3 });
}

function owedTouchUps(
  used: readonly UsedRow[],
  procedures: ReadonlyMap<string, ProcedureRow>,
  now: string,
  timeZone: string,
): OwedTouchUp[] {
  const today = localDay(now, timeZone);
  const owed = new Map<string, OwedTouchUp & { pigments: { lotId: string; productId: string }[] }>();
  for (const { sessionId, procedureId, completedAt, plannedStart, lotId, productId } of used) {
    const days = procedures.get(procedureId);
    if (days === undefined) continue;
    const plannedDay = plannedStart === null ? null : localDay(plannedStart, timeZone);
    const touchUp = owed.get(sessionId) ?? {
      sessionId,
      completedOn: localDay(completedAt, timeZone),
      days,
      // One that nobody came to, and nobody marked so, says nothing of the day.
      plannedOn: plannedDay !== null && plannedDay >= today ? plannedDay : null,
      pigments: [],
    };
    touchUp.pigments.push({ lotId, productId });
    owed.set(sessionId, touchUp);
  }
  return [...owed.values()];
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
