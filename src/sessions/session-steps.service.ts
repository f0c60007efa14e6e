import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { MixReader } from './mix-reader.service.js';
import { ProspectJudge } from './prospects/prospect-judge.service.js';
import { Session } from './session.entity.js';
import { SessionClients } from './session-clients.service.js';
import { SessionLock } from './session-lock.service.js';
import type { SessionStep } from './session-states.js';
import { SessionWastes } from './session-wastes.service.js';
import type { SessionStepDto } from './sessions.dto.js';
import type { WrittenSessionView } from './sessions.views.js';
import { TrayLine } from './tray-line.entity.js';
import { writtenSession } from './written-session.js';

type PlainStep = Extract<SessionStep, 'start setup' | 'cancel' | 'not attended'>;

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

/** Starts the setup of a session, cancels it, or records that the client did not come. */
@Injectable()
export class SessionSteps {
  constructor(
    private readonly transactions: Transactions,
    private readonly sessionClients: SessionClients,
    private readonly lock: SessionLock,
    private readonly mixReader: MixReader,
    private readonly wastes: SessionWastes,
    private readonly prospects: ProspectJudge,
  ) {}

  async take(
    actor: Actor,
    sessionId: string,
    step: PlainStep,
    dto: SessionStepDto,
  ): Promise<WrittenSessionView> {
    const { studioId } = actor;
    const { client } = await this.sessionClients.of(studioId, sessionId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: actions[step],
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        const present = await this.lock.row(transaction, sessionId);
        const tray = await transaction.manager.findBy(TrayLine, { studioId, sessionId, state: 'on tray' });
        const onTray = tray.filter((line) => line.pieces > 0).length;
        const state = this.lock.decide(step, present.state, onTray);
        const happenedAt = occurredAt(dto.occurredAt, transaction.recordedAt);
        if (step !== 'start setup') await this.leaveSetup(transaction, sessionId, tray, step, happenedAt);
        const session = await transaction.change(
          Session,
          'session',
          { studioId, id: sessionId },
          present.version,
          { state, [instantFields[step]]: happenedAt },
        );
        await this.prospects.mark(transaction);
        return writtenSession(session, client.reference);
      },
    );
  }

  /** Shared bottles leave the tray; what was poured into cups touched nobody and is wasted, and its bottles are open. */
  private async leaveSetup(
    transaction: Transaction,
    sessionId: string,
    tray: TrayLine[],
    step: PlainStep,
    happenedAt: string,
  ): Promise<void> {
    await transaction.updateAll(
      TrayLine,
      tray.map((line) => line.id),
      { state: 'taken off' },
    );
    const poured = await this.mixReader.contents(transaction.read, transaction.studioId, [sessionId]);
    const reason = step === 'cancel' ? 'session cancelled' : 'client did not come';
    await this.wastes.book(
      transaction,
      sessionId,
      poured.map((content) => ({ ...content, pieces: 0 })),
      reason,
      happenedAt,
      true,
    );
  }
}
