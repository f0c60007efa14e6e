import { Injectable } from '@nestjs/common';
import { Clients } from '../clients/clients.service.js';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { notFound, Problem } from '../platform/problem.js';
import { Ledger } from '../stock/ledger.service.js';
import { StockConditions } from '../stock/stock-conditions.service.js';
import { Session } from './session.entity.js';
import { lockedSession, written } from './session-planning.service.js';
import { decideStep, type SessionStep } from './session-states.js';
import type { SessionStepDto } from './sessions.dto.js';
import type { WrittenSessionView } from './sessions.views.js';
import { TrayLine } from './tray-line.entity.js';

type PlainStep = Exclude<SessionStep, 'complete' | 'change plan'>;

const actions: Record<PlainStep, string> = {
  'start setup': 'sessions.start-setup',
  cancel: 'sessions.cancel',
  'not attended': 'sessions.not-attended',
};
const instantFields = {
  'start setup': 'inSetupAt',
  cancel: 'cancelledAt',
  'not attended': 'notAttendedAt',
} as const;

interface PouredRow {
  lot_id: string;
  container_id: string;
  product_id: string;
  microlitres: number;
}

/** Starts the setup of a session, cancels it, or records that the client did not come. */
@Injectable()
export class SessionSteps {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clients: Clients,
    private readonly ledger: Ledger,
    private readonly stockConditions: StockConditions,
  ) {}

  async take(
    actor: Actor,
    sessionId: string,
    step: PlainStep,
    dto: SessionStepDto,
  ): Promise<WrittenSessionView> {
    const { studioId } = actor;
    const before = await this.database.reader.manager.findOneBy(Session, { studioId, id: sessionId });
    if (!before) throw notFound('session', sessionId);
    const { client } = await this.clients.known(studioId, before.clientId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: actions[step],
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        const present = await lockedSession(transaction, sessionId);
        const tray = await transaction.manager.findBy(TrayLine, { studioId, sessionId, state: 'on tray' });
        const onTray = tray.filter((line) => line.pieces > 0).length;
        const decision = decideStep(step, { state: present.state, onTray });
        if (!decision.allowed) throw new Problem(409, 'wrong-state', decision.message);
        const happenedAt = occurredAt(dto.occurredAt, transaction.recordedAt);
        if (step !== 'start setup') await this.leaveSetup(transaction, sessionId, tray, step, happenedAt);
        const session = await transaction.change(
          Session,
          'session',
          { studioId, id: sessionId },
          present.version,
          { state: decision.state, [instantFields[step]]: happenedAt },
        );
        return written(session, client.reference);
      },
    );
  }

  /** Shared bottles leave the tray; what was poured into cups touched nobody and is wasted. */
  private async leaveSetup(
    transaction: Transaction,
    sessionId: string,
    tray: TrayLine[],
    step: PlainStep,
    happenedAt: string,
  ): Promise<void> {
    const { studioId } = transaction;
    for (const { id } of tray) await transaction.update(TrayLine, { studioId, id }, { state: 'taken off' });
    const poured = await transaction.query<PouredRow>(
      `SELECT mix_component.lot_id, mix_component.container_id, lot.product_id,
         sum(mix_component.microlitres) AS microlitres
       FROM mix_component
         JOIN lot ON lot.studio_id = mix_component.studio_id AND lot.id = mix_component.lot_id
       WHERE mix_component.studio_id = $1 AND mix_component.session_id = $2
       GROUP BY mix_component.lot_id, mix_component.container_id, lot.product_id
       HAVING sum(mix_component.microlitres) > 0
       ORDER BY mix_component.container_id`,
      [studioId, sessionId],
    );
    if (poured.length === 0) return;
    await transaction.lock(
      'lot',
      poured.map((row) => row.lot_id),
    );
    await this.ledger.bookWhatHappened(
      transaction,
      poured.map((row) => ({
        lotId: row.lot_id,
        containerId: row.container_id,
        kind: 'wasted',
        pieces: 0,
        microlitres: row.microlitres,
        sessionId,
        reason: step === 'cancel' ? 'session cancelled' : 'client did not come',
        occurredAt: happenedAt,
      })),
    );
    await this.stockConditions.reevaluate(transaction, [...new Set(poured.map((row) => row.product_id))]);
  }
}
