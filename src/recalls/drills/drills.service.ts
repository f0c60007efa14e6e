import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { invalidField, notFound, Problem, reusedId } from '../../platform/problem.js';
import type { PageDto } from '../../platform/request.dto.js';
import { RecallOpening } from '../recall-opening.service.js';
import type { ScopeItemDto } from '../scope/scope.dto.js';
import type { RecallState } from '../vocabulary.js';
import { drawnLot } from './drawn-lot.js';
import { type DrillNotice, drillNoticeText, readDrillNotice } from './drill-notice.js';
import type { OpenDrillDto } from './drills.dto.js';
import type { DrillPageView, DrillScoreView, OpenedDrillView } from './drills.views.js';

const usualYears = 3;
const longestTitle = 200;

interface DrillRow {
  recallId: string;
  title: string;
  state: RecallState;
  chainWide: number;
  openedAt: string;
  endedAt: string | null;
  noticeText: string | null;
  facts: string | null;
}

interface LotRow {
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  code: string | null;
  useBy: string | null;
}

/** Rehearsals of a recall: nothing is held and nobody is told, and each is timed and scored. */
@Injectable()
export class Drills {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly opening: RecallOpening,
  ) {}

  /** The latest first. */
  async list({ studioId }: Actor, page: PageDto): Promise<DrillPageView> {
    const limit = page.limit ?? defaultPageSize;
    await refuseUnknownStart(this.database.read, 'recall', studioId, page.after);
    const before =
      page.after === undefined
        ? ''
        : `AND (recall.opened_at, recall.id) < (SELECT last.opened_at, last.id FROM recall AS last
            WHERE last.studio_id = $1 AND last.id = $3)`;
    const rows = await this.database.read<DrillRow>(
      `SELECT recall.id AS "recallId", recall.title, recall.state, recall.chain_wide AS "chainWide",
         recall.opened_at AS "openedAt", recall.ended_at AS "endedAt",
         (SELECT recall_notice.text FROM recall_scope JOIN recall_notice
            ON recall_notice.studio_id = recall_scope.studio_id AND recall_notice.id = recall_scope.notice_id
          WHERE recall_scope.studio_id = $1 AND recall_scope.recall_id = recall.id
            AND recall_scope.number = 1) AS "noticeText",
         CASE WHEN recall.state = 'closed' THEN (
           SELECT recall_closing.facts FROM recall_closing
           WHERE recall_closing.studio_id = $1 AND recall_closing.recall_id = recall.id
           ORDER BY recall_closing.recorded_at DESC, recall_closing.id DESC LIMIT 1) END AS facts
       FROM recall WHERE recall.studio_id = $1 AND recall.kind = 'drill' ${before}
       ORDER BY recall.opened_at DESC, recall.id DESC LIMIT $2`,
      page.after === undefined ? [studioId, limit + 1] : [studioId, limit + 1, page.after],
    );
    const { shown, next } = pageOf(rows, limit, ({ recallId }) => recallId);
    return {
      items: shown.map(({ noticeText, facts, chainWide, ...drill }) => ({
        ...drill,
        chainWide: chainWide === 1,
        drawn: noticeText !== null && readDrillNotice(noticeText)?.draw != null,
        score:
          facts === null ? null : ((JSON.parse(facts) as { score?: DrillScoreView | null }).score ?? null),
      })),
      next,
    };
  }

  /**
   * @throws Problem invalid-fields when a lot is neither chosen nor to be drawn, or both; not-found; wrong-state when there
   * is no lot to draw; not-allowed for a whole chain that the person does not lead
   */
  async open(actor: Actor, dto: OpenDrillDto): Promise<OpenedDrillView> {
    if ((dto.lotId === undefined) === (dto.random === undefined)) {
      throw invalidField(
        'lotId',
        'Choose the lot to rehearse with, or let one be drawn with "random", not both.',
      );
    }
    const notice = (await this.opened(actor, dto)) ?? (await this.chosen(actor, dto));
    const lot = await this.lotOf(actor, notice.lotId);
    const product = [lot.productName, lot.shade].filter((part) => part !== null).join(' ');
    const title = `Drill: ${product}, lot ${lot.code ?? 'without a code'}`;
    await this.opening.open(
      actor,
      {
        id: dto.id,
        title: title.slice(0, longestTitle),
        notice: {
          source: 'entered',
          text: drillNoticeText({ ...notice, lot: notice.lot || title.slice(7) }),
        },
        scope: { items: [itemOf(lot)] },
        ...(dto.wholeChain === true && { chainWide: true }),
      },
      'drill',
    );
    return {
      recallId: dto.id,
      lotId: notice.lotId,
      drawn: notice.draw !== null,
      drawnFrom: notice.draw?.lots ?? null,
    };
  }

  /** What the same request opened before: a lot that is drawn again later may be another. */
  private async opened({ studioId }: Actor, dto: OpenDrillDto): Promise<DrillNotice | undefined> {
    const [row] = await this.database.read<{ text: string }>(
      `SELECT recall_notice.text FROM recall_scope JOIN recall_notice
         ON recall_notice.studio_id = recall_scope.studio_id AND recall_notice.id = recall_scope.notice_id
       WHERE recall_scope.studio_id = $1 AND recall_scope.recall_id = $2 AND recall_scope.number = 1`,
      [studioId, dto.id],
    );
    const notice = row && readDrillNotice(row.text);
    if (!notice) return undefined;
    const years = notice.draw?.years;
    if (dto.random === true ? years !== (dto.years ?? usualYears) : dto.lotId !== notice.lotId) {
      throw reusedId(dto.id);
    }
    return notice;
  }

  private async chosen({ studioId }: Actor, dto: OpenDrillDto): Promise<DrillNotice> {
    if (dto.lotId !== undefined) return { lotId: dto.lotId, lot: '', draw: null };
    const years = dto.years ?? usualYears;
    const since = Temporal.Instant.from(this.clock.now())
      .toZonedDateTimeISO('UTC')
      .subtract({ years })
      .toInstant()
      .toString({ fractionalSecondDigits: 3 });
    const lots = await this.database.read<{ id: string }>(
      `SELECT lot.id FROM lot
       WHERE lot.studio_id = $1 AND lot.origin <> 'blend' AND EXISTS (
         SELECT 1 FROM session_use
         WHERE session_use.studio_id = $1 AND session_use.lot_id = lot.id AND session_use.occurred_at >= $2)`,
      [studioId, since],
    );
    const lotId = drawnLot(
      dto.id,
      lots.map(({ id }) => id),
    );
    if (lotId === undefined) {
      throw new Problem(
        409,
        'wrong-state',
        `No lot was used in a session in the last ${years} years, so there is none to draw from. Choose a lot, or look further back with years.`,
      );
    }
    return { lotId, lot: '', draw: { seed: dto.id, lots: lots.length, years } };
  }

  private async lotOf({ studioId }: Actor, lotId: string): Promise<LotRow> {
    const [lot] = await this.database.read<LotRow>(
      `SELECT lot.product_id AS "productId", maker.name AS "makerName", product.name AS "productName",
         product.shade, lot.use_by AS "useBy", (
           SELECT lot_code.code FROM lot_code
           WHERE lot_code.studio_id = lot.studio_id AND lot_code.lot_id = lot.id AND lot_code.superseded_at IS NULL
           ORDER BY CASE lot_code.kind WHEN 'lot' THEN 0 WHEN 'batch' THEN 1 ELSE 2 END, lot_code.code LIMIT 1) AS code
       FROM lot JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE lot.studio_id = $1 AND lot.id = $2`,
      [studioId, lotId],
    );
    if (!lot) throw notFound('lot', lotId);
    return lot;
  }
}

/** The lot as a notice would name it. */
function itemOf({ productId, makerName, productName, shade, code, useBy }: LotRow): ScopeItemDto {
  return {
    makerName,
    productName,
    ...(shade !== null && { shade }),
    gtins: [],
    productIds: [productId],
    lots:
      code !== null
        ? [{ kind: 'code', code }]
        : useBy !== null
          ? [{ kind: 'use-by', useBy: { from: useBy, through: useBy } }]
          : [{ kind: 'all lots' }],
    openEnded: false,
  };
}
