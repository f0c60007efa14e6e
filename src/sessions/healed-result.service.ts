import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { canonicalJson } from '../platform/canonical-json.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import type { RecordHealedResultDto } from './healed-result.dto.js';
import { sealedAsHealedResult } from './sealing-contexts.js';
import { Session } from './session.entity.js';
import { SessionClients } from './session-clients.service.js';
import { SessionLock } from './session-lock.service.js';
import type { HealedResultView } from './session-record.views.js';
import type { WrittenSessionView } from './sessions.views.js';
import { writtenSession } from './written-session.js';

/** How the colour of a session healed, as it was seen later, usually at the touch-up. */
@Injectable()
export class HealedResults {
  constructor(
    private readonly transactions: Transactions,
    private readonly sessionClients: SessionClients,
    private readonly lock: SessionLock,
  ) {}

  /** Records it once; a later one corrects it and names the version it was made from. */
  async record(actor: Actor, sessionId: string, dto: RecordHealedResultDto): Promise<WrittenSessionView> {
    const { studioId } = actor;
    const known = await this.sessionClients.of(studioId, sessionId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.record-healed-result',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        const present = await this.lock.row(transaction, sessionId);
        const sealer = await this.sessionClients.sealer(transaction, known);
        refuseUnready(present, dto);
        const seenAtSessionId = dto.seenAtSessionId ?? null;
        if (seenAtSessionId !== null) await this.refuseOtherClient(transaction, present, seenAtSessionId);
        const result: HealedResultView = {
          retainedColourPercent: dto.retainedColourPercent,
          note: dto.note ?? null,
          occurredAt: occurredAt(dto.occurredAt, transaction.recordedAt),
          seenAtSessionId,
        };
        const session = await transaction.change(
          Session,
          'session',
          { studioId, id: sessionId },
          dto.version ?? present.version,
          { healedResultSealed: sealer.seal(canonicalJson(result), sealedAsHealedResult(sessionId)) },
        );
        transaction.note({ fields: ['healedResult'] });
        return writtenSession(session, known.client.reference);
      },
    );
  }

  private async refuseOtherClient(
    transaction: Transaction,
    session: Session,
    seenAtSessionId: string,
  ): Promise<void> {
    const { studioId } = transaction;
    const visit = await transaction.manager.findOneBy(Session, { studioId, id: seenAtSessionId });
    if (!visit) throw notFound('session', seenAtSessionId);
    if (visit.clientId === session.clientId && seenAtSessionId !== session.id) return;
    throw invalidField(
      'seenAtSessionId',
      'The visit named is not another visit of this client. Name the visit at which the result was seen, or leave it out.',
    );
  }
}

function refuseUnready(session: Session, dto: RecordHealedResultDto): void {
  if (session.state !== 'completed') {
    throw new Problem(
      409,
      'wrong-state',
      `This session is ${session.state}. A healed result belongs to a completed session; name the visit whose colour has healed.`,
    );
  }
  if (session.healedResultSealed === null || dto.version !== undefined) return;
  throw new Problem(
    409,
    'already-exists',
    `A healed result is recorded already. To correct it, read the session and send its version (now ${session.version}).`,
    { version: session.version },
  );
}
