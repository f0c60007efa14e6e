import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { notFound } from '../platform/problem.js';
import { type GradedLot, LotsEverHeld } from '../stock/lot-matching/lots-ever-held.service.js';
import { noteOfHold } from './note-of-hold.js';
import { RecallConditions } from './recall-conditions.service.js';
import { RecallHolds, type Told } from './recall-holds.service.js';
import { RecallLot } from './recall-lot.entity.js';
import { RecallScope } from './recall-scope.entity.js';
import type { RecallKind } from './vocabulary.js';

/** A scope as somebody says it, with what the notice tells beside it. */
export type SaidScope = Pick<
  RecallScope,
  | 'noticeId'
  | 'scope'
  | 'issuer'
  | 'reference'
  | 'issuedOn'
  | 'classification'
  | 'risk'
  | 'remedy'
  | 'reason'
  | 'occurredAt'
>;

export interface ScopedRecall {
  id: string;
  kind: RecallKind;
  title: string;
}

/** Which of the lots that are only possibly meant are held too. */
export type HeldPossible = 'all' | 'none' | readonly string[];

/**
 * Writes a scope of a recall and carries it out, in the caller's transaction: every lot ever held is graded, certain ones
 * are held at once and possible ones by choice, and what is yet to arrive by a standing hold. Of a drill only the grades
 * are written.
 */
@Injectable()
export class RecallScoping {
  constructor(
    private readonly lots: LotsEverHeld,
    private readonly holds: RecallHolds,
    private readonly conditions: RecallConditions,
  ) {}

  /** @throws Problem not-found when a lot is chosen that this studio never held */
  async write(
    transaction: Transaction,
    recall: ScopedRecall,
    number: number,
    said: SaidScope,
    heldPossible: HeldPossible,
  ): Promise<{ graded: GradedLot[]; told: Told }> {
    const { studioId, recordedAt, actor } = transaction;
    // Nothing arrives between this look and the standing hold.
    await transaction.lockStudio();
    if (typeof heldPossible !== 'string') await requireLots(transaction, heldPossible);
    const graded = await this.lots.graded(transaction.read, actor.chainId, studioId, said.scope);
    await transaction.insert(RecallScope, {
      ...said,
      studioId,
      id: uuidv7(),
      recallId: recall.id,
      number,
      recordedAt,
      personId: actor.personId,
      via: actor.via,
    });
    if (graded.length > 0) {
      await transaction.insert(
        RecallLot,
        graded.map(
          ({ lotId, itemIndex, grade, reasons }): RecallLot => ({
            studioId,
            id: uuidv7(),
            recallId: recall.id,
            scopeNumber: number,
            lotId,
            itemIndex,
            grade,
            reasons,
            recordedAt,
          }),
        ),
      );
    }
    if (recall.kind === 'drill') return { graded, told: [] };
    const holding = {
      recallId: recall.id,
      note: noteOfHold(recall.title, said.reference),
      occurredAt: said.occurredAt,
    };
    const decisions = await this.latestDecisions(transaction, recall.id);
    const isChosen = ({ lotId }: GradedLot) =>
      heldPossible === 'all' || (heldPossible !== 'none' && heldPossible.includes(lotId));
    const held = graded.filter((lot) => {
      const decision = lot.grade === 'certain' ? 'affected' : decisions.get(lot.lotId);
      return decision === undefined ? isChosen(lot) : decision === 'affected';
    });
    const told = await this.holds.hold(
      transaction,
      holding,
      held.map(({ lotId }) => lotId),
    );
    await this.holds.stand(transaction, holding, said.scope);
    await this.conditions.reevaluate(transaction, recall.id);
    return { graded, told };
  }

  /** By lot id. */
  private async latestDecisions(transaction: Transaction, recallId: string): Promise<Map<string, string>> {
    const rows = await transaction.query<{ lotId: string; decision: string }>(
      `SELECT lot_id AS "lotId", decision FROM recall_lot_decision
       WHERE studio_id = $1 AND recall_id = $2 ORDER BY recorded_at, id`,
      [transaction.studioId, recallId],
    );
    return new Map(rows.map(({ lotId, decision }) => [lotId, decision]));
  }
}

async function requireLots({ read, studioId }: Transaction, lotIds: readonly string[]): Promise<void> {
  if (lotIds.length === 0) return;
  const rows = await read<{ id: string }>(
    `SELECT id FROM lot WHERE studio_id = $1 AND id IN (${placeholders(lotIds)})`,
    [studioId, ...lotIds],
  );
  const known = new Set(rows.map(({ id }) => id));
  const unknown = lotIds.find((id) => !known.has(id));
  if (unknown !== undefined) throw notFound('lot', unknown);
}
