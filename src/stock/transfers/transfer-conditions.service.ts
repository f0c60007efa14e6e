import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Alerts } from '../../alerts/alerts.service.js';
import { ConditionEvaluators } from '../../alerts/condition-evaluators.service.js';
import type { OpenCondition } from '../../alerts/open-condition.js';
import { localDay } from '../../identity/local-day.js';
import { placeholders, type Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { isLongInTransit } from './long-transit.js';
import { type LotHeldElsewhere, lotsHeldElsewhere } from './news-of-goods.js';
import type { ToldHold } from './transfer.entity.js';
import { latestFacts } from './transfer-register.service.js';

export const longInTransit = 'in transit too long';
export const heldElsewhere = 'held where it came from';
export const transferConditionKinds = [longInTransit, heldElsewhere];

/**
 * Goods that are on their way for too long, at both ends; and lots here of which goods are on hold in the studio they
 * came from.
 */
@Injectable()
export class TransferConditions implements OnModuleInit {
  constructor(
    private readonly alerts: Alerts,
    private readonly evaluators: ConditionEvaluators,
  ) {}

  onModuleInit(): void {
    this.evaluators.register({
      name: 'transfers',
      kinds: transferConditionKinds,
      evaluate: (transaction) =>
        this.standing(transaction.read, transaction.studioId, transaction.recordedAt),
    });
  }

  /** Opens and closes the alerts of the studio's transfers. */
  async reevaluate(transaction: Transaction): Promise<void> {
    await transaction.lockStudio();
    const standing = await this.standing(transaction.read, transaction.studioId, transaction.recordedAt);
    const scope = { kinds: transferConditionKinds, subjects: 'all' as const };
    await this.alerts.reconcile(transaction, scope, standing);
  }

  /** All that stands at an instant, judged on the studio's day. */
  async standing(read: Read, studioId: string, at: string): Promise<OpenCondition[]> {
    const [studio] = await read<{ time_zone: string }>('SELECT time_zone FROM studio WHERE id = $1', [
      studioId,
    ]);
    if (!studio) throw new Error(`The studio ${studioId} is gone.`);
    return [
      ...(await this.longInTransit(read, studioId, at, studio.time_zone)),
      ...(await this.heldElsewhere(read, studioId)),
    ];
  }

  private async longInTransit(
    read: Read,
    studioId: string,
    at: string,
    timeZone: string,
  ): Promise<OpenCondition[]> {
    const open = await read<{ id: string; senderId: string; sentAt: string; lines: number; pieces: number }>(
      `SELECT transfer.id, transfer.studio_id AS "senderId", transfer.occurred_at AS "sentAt",
         count(*) AS lines, sum(line.pieces) AS pieces
       FROM transfer JOIN transfer_line AS line
         ON line.studio_id = transfer.studio_id AND line.transfer_id = transfer.id
       WHERE (transfer.studio_id = $1 OR transfer.receiver_id = $1) AND NOT EXISTS (
         SELECT 1 FROM transfer_outcome AS outcome
         WHERE outcome.sender_id = line.studio_id AND outcome.line_id = line.id)
       GROUP BY transfer.id, transfer.studio_id, transfer.occurred_at ORDER BY transfer.id`,
      [studioId],
    );
    const today = localDay(at, timeZone);
    return open.flatMap(({ id, senderId, sentAt, lines, pieces }): OpenCondition[] => {
      const sentOn = localDay(sentAt, timeZone);
      if (!isLongInTransit(sentOn, today)) return [];
      const direction = senderId === studioId ? 'out' : 'in';
      const facts = { direction, sentOn, lines, pieces };
      return [{ kind: longInTransit, subjectKind: 'transfer', subjectId: id, severity: 'warning', facts }];
    });
  }

  private async heldElsewhere(read: Read, studioId: string): Promise<OpenCondition[]> {
    const goods = await read<{ lotId: string; containerId: string; transferId: string; holds: string }>(
      `SELECT DISTINCT goods.lot_id AS "lotId", goods.container_id AS "containerId",
         line.transfer_id AS "transferId", facts.holds
       FROM transfer_goods AS goods
         JOIN transfer_outcome AS outcome
           ON outcome.studio_id = goods.studio_id AND outcome.id = goods.outcome_id
         JOIN transfer_line AS line ON line.studio_id = outcome.sender_id AND line.id = outcome.line_id
         JOIN transfer_line_facts AS facts
           ON facts.studio_id = line.studio_id AND facts.line_id = line.id AND ${latestFacts}
       WHERE goods.studio_id = $1 AND outcome.kind <> 'withdrawn' AND facts.holds <> '[]'`,
      [studioId],
    );
    if (goods.length === 0) return [];
    const found = lotsHeldElsewhere(
      goods.map(({ lotId, containerId, holds }) => ({
        lotId,
        containerId,
        heldThere: JSON.parse(holds) as ToldHold[],
      })),
      await this.heldHere(read, studioId),
    );
    const names = await this.names(
      read,
      studioId,
      found.map(({ lotId }) => lotId),
    );
    return found.map((lot): OpenCondition => {
      const transferIds = goods.filter(({ lotId }) => lotId === lot.lotId).map((one) => one.transferId);
      return conditionOf(lot, names.get(lot.lotId) ?? {}, [...new Set(transferIds)].sort());
    });
  }

  private async heldHere(
    read: Read,
    studioId: string,
  ): Promise<{ lotIds: Set<string>; containerIds: Set<string> }> {
    const rows = await read<{ lotId: string | null; containerId: string | null }>(
      `SELECT hold.lot_id AS "lotId", hold.container_id AS "containerId" FROM hold
       WHERE hold.studio_id = $1 AND NOT EXISTS (
         SELECT 1 FROM hold_release
         WHERE hold_release.studio_id = hold.studio_id AND hold_release.hold_id = hold.id)`,
      [studioId],
    );
    return {
      lotIds: new Set(rows.flatMap(({ lotId }) => lotId ?? [])),
      containerIds: new Set(rows.flatMap(({ containerId }) => containerId ?? [])),
    };
  }

  private async names(
    read: Read,
    studioId: string,
    lotIds: readonly string[],
  ): Promise<Map<string, Record<string, unknown>>> {
    if (lotIds.length === 0) return new Map();
    const rows = await read<Record<string, string | null> & { id: string }>(
      `SELECT lot.id, product.name AS product, product.shade, maker.name AS maker, lot.code AS "lotCode",
         lot.use_by AS "useBy"
       FROM lot
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE lot.studio_id = $1 AND lot.id IN (${placeholders(lotIds)})`,
      [studioId, ...lotIds],
    );
    return new Map(rows.map(({ id, ...names }) => [id, names]));
  }
}

function conditionOf(
  { lotId, severity, holdKinds, reasons }: LotHeldElsewhere,
  names: Record<string, unknown>,
  transferIds: string[],
): OpenCondition {
  const facts = { ...names, holdKinds, reasons, transferIds };
  return { kind: heldElsewhere, subjectKind: 'lot', subjectId: lotId, severity, facts };
}
