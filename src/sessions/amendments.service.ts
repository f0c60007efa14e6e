import { Injectable } from '@nestjs/common';
import { Alerts } from '../alerts/alerts.service.js';
import { People } from '../identity/people.service.js';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { type Booking, Ledger, moreThanBooked } from '../stock/ledger.service.js';
import { StockConditions } from '../stock/stock-conditions.service.js';
import type { AddUsesDto, ReverseUseDto } from './late-records.dto.js';
import type { RecordedUsesView, ReversedUseView } from './late-records.views.js';
import { LateUses } from './late-uses.service.js';
import { sealedAsUseReversalReason } from './sealing-contexts.js';
import { Session } from './session.entity.js';
import { SessionClients } from './session-clients.service.js';
import { SessionLock } from './session-lock.service.js';
import { SessionOpenings } from './session-openings.service.js';
import { SessionUse, SessionUseReversal } from './session-use.entity.js';
import { TrayLine } from './tray-line.entity.js';
import type { TraySession } from './tray-sessions.service.js';
import { UseRecorder, useAgainstRefusal } from './use-recorder.service.js';
import { writtenSession, writtenUse } from './written-session.js';

/**
 * Amends a completed session: a use that was recorded by mistake is reversed, what is missing is recorded now. Nothing
 * recorded is altered, and both stay visible.
 */
@Injectable()
export class Amendments {
  constructor(
    private readonly transactions: Transactions,
    private readonly people: People,
    private readonly sessionClients: SessionClients,
    private readonly lock: SessionLock,
    private readonly ledger: Ledger,
    private readonly alerts: Alerts,
    private readonly stockConditions: StockConditions,
    private readonly lateUses: LateUses,
    private readonly recorder: UseRecorder,
    private readonly openings: SessionOpenings,
  ) {}

  async reverse(
    actor: Actor,
    sessionId: string,
    useId: string,
    dto: ReverseUseDto,
  ): Promise<ReversedUseView> {
    const { studioId, personId, via } = actor;
    const known = await this.sessionClients.of(studioId, sessionId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.reverse-use',
        subject: { kind: 'use', id: useId },
        content: { sessionId, useId, ...dto },
      },
      async (transaction) => {
        const session = await this.lock.forStep(transaction, sessionId, 'amend');
        const sealing = await this.sessionClients.sealing(transaction, known);
        if (dto.reason === undefined && !sealing.erased) throw reasonMissing();
        const use = await transaction.manager.findOneBy(SessionUse, { studioId, id: useId, sessionId });
        if (!use) throw notFound('use', useId);
        await this.refuseReversed(transaction, useId);
        const at = occurredAt(dto.occurredAt, transaction.recordedAt);
        await transaction.lock('lot', [use.lotId]);
        const movementId = await this.giveBack(transaction, use, at);
        await transaction.insert(SessionUseReversal, {
          studioId,
          useId,
          movementId,
          reasonSealed: sealing.seal(dto.reason ?? null, sealedAsUseReversalReason(useId)) ?? '',
          recordedAt: transaction.recordedAt,
          personId,
          via,
        });
        await this.openings.takeBack(transaction, use);
        await this.freeSerial(transaction, use);
        const subjects = [{ kind: 'use', id: useId }];
        await this.alerts.reconcile(transaction, { kinds: [useAgainstRefusal], subjects }, []);
        await this.stockConditions.reevaluate(transaction, await this.productOf(transaction, use));
        const { version } = await this.moveOn(transaction, session);
        return { useId, sessionId, version, pieces: use.pieces, microlitres: use.microlitres };
      },
    );
  }

  async addUses(actor: Actor, sessionId: string, dto: AddUsesDto): Promise<RecordedUsesView> {
    const { studioId } = actor;
    const known = await this.sessionClients.of(studioId, sessionId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.add-uses',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        const session = await this.lock.forStep(transaction, sessionId, 'amend');
        const sealing = await this.sessionClients.sealing(transaction, known);
        await this.people.require(
          transaction,
          dto.uses.flatMap((use) => use.appliedBy ?? []),
        );
        const { uses, madeLots, warnings } = await this.lateUses.prepare(
          transaction,
          sessionId,
          dto.uses,
          session.completedAt ?? transaction.recordedAt,
        );
        const recorded = await this.recorder.record(
          transaction,
          { id: sessionId, clientId: session.clientId, sealing },
          uses,
        );
        warnings.push(...(await this.lateUses.catchMade(transaction, madeLots)));
        const moved = await this.moveOn(transaction, session);
        const { followsBecause: _, ...written } = writtenSession(moved, known.client.reference);
        const madeLotIds = madeLots.map(({ id }) => id);
        return { ...written, state: 'completed', uses: recorded.map(writtenUse), madeLotIds, warnings };
      },
    );
  }

  private async refuseReversed(transaction: Transaction, useId: string): Promise<void> {
    const { studioId } = transaction;
    const earlier = await transaction.manager.findOneBy(SessionUseReversal, { studioId, useId });
    if (!earlier) return;
    throw new Problem(
      409,
      'wrong-state',
      `This use was reversed already, on ${earlier.recordedAt}. Record it again if it did take place.`,
    );
  }

  /** What the use took goes back on the book, and what it had made other uses or itself adjust is taken off it again. */
  private async giveBack(transaction: Transaction, use: SessionUse, at: string): Promise<string | null> {
    if (use.movementId === null) return null;
    const { lotId, containerId } = use;
    const reason = 'use recorded by mistake';
    const reversal = await this.ledger.reverse(transaction, use.movementId, reason, at);
    const left = { pieces: use.pieces, microlitres: use.microlitres };
    for (const { id, sessionId, pieces, microlitres } of await this.adjustmentsSince(transaction, use)) {
      const taken = {
        pieces: Math.min(pieces, left.pieces),
        microlitres: Math.min(microlitres, left.microlitres),
      };
      if (taken.pieces === 0 && taken.microlitres === 0) continue;
      const stillNeeded: Booking = {
        lotId,
        containerId,
        kind: 'adjusted',
        pieces: pieces - taken.pieces,
        microlitres: microlitres - taken.microlitres,
        sessionId,
        reason: moreThanBooked,
        occurredAt: at,
      };
      // A movement is reversed whole. What other uses need of it is booked first, so that the book is never below zero.
      await this.ledger.book(transaction, [stillNeeded]);
      await this.ledger.reverse(transaction, id, reason, at);
      left.pieces -= taken.pieces;
      left.microlitres -= taken.microlitres;
    }
    return reversal.id;
  }

  /**
   * What uses above the book needed of its container, from this use on: a use that took too much off the book has later
   * ones, of any session, ask for more. What was adjusted before was not its doing.
   */
  private adjustmentsSince(
    transaction: Transaction,
    { containerId, recordedAt }: SessionUse,
  ): Promise<{ id: string; sessionId: string | null; pieces: number; microlitres: number }[]> {
    return transaction.query(
      `SELECT movement.id, movement.session_id AS "sessionId", movement.pieces, movement.microlitres
       FROM movement LEFT JOIN movement AS later
         ON later.studio_id = movement.studio_id AND later.reverses_id = movement.id
       WHERE movement.studio_id = $1 AND movement.container_id = $2 AND movement.recorded_at >= $3
         AND movement.kind = 'adjusted' AND movement.reason = $4 AND movement.reverses_id IS NULL
         AND later.id IS NULL
       ORDER BY movement.sequence DESC`,
      [transaction.studioId, containerId, recordedAt, moreThanBooked],
    );
  }

  /** A piece that was not used lies on no tray any more, and its serial number can be used. */
  private async freeSerial(transaction: Transaction, { trayLineId: id }: SessionUse): Promise<void> {
    if (id === null) return;
    const line = await transaction.manager.findOneBy(TrayLine, { studioId: transaction.studioId, id });
    if (line?.settledAs !== 'used' || line.pieces === 0) return;
    await transaction.updateAll(TrayLine, [id], { settledAs: 'back unopened' });
  }

  private async productOf(transaction: Transaction, { lotId }: SessionUse): Promise<string[]> {
    const lots = await transaction.query<{ product_id: string }>(
      'SELECT product_id FROM lot WHERE studio_id = $1 AND id = $2',
      [transaction.studioId, lotId],
    );
    return lots.map((lot) => lot.product_id);
  }

  /** Moves the session one version on, so that whoever has read it before sees that it was amended. */
  private moveOn(transaction: Transaction, session: TraySession): Promise<Session> {
    const key = { studioId: transaction.studioId, id: session.id };
    return transaction.change(Session, 'session', key, session.version, {});
  }
}

function reasonMissing(): Problem {
  return invalidField('reason', 'reason must say why the use was recorded by mistake');
}
