import { Injectable } from '@nestjs/common';
import { localDay } from '../identity/local-day.js';
import type { Actor } from '../platform/actor.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField } from '../platform/problem.js';
import { addedComplications, longestComplicationsInAll } from './added-complications.js';
import type { AddComplicationsDto } from './complications.dto.js';
import { sealedAsComplications } from './sealing-contexts.js';
import { Session } from './session.entity.js';
import { SessionClients } from './session-clients.service.js';
import { SessionLock } from './session-lock.service.js';
import type { WrittenSessionView } from './sessions.views.js';
import { writtenSession } from './written-session.js';

/** Complications that show only after the client has left. What was said before is kept. */
@Injectable()
export class Complications {
  constructor(
    private readonly transactions: Transactions,
    private readonly sessionClients: SessionClients,
    private readonly lock: SessionLock,
  ) {}

  async add(actor: Actor, sessionId: string, dto: AddComplicationsDto): Promise<WrittenSessionView> {
    const { studioId } = actor;
    const known = await this.sessionClients.of(studioId, sessionId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.add-complications',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        const { state, complicationsSealed } = await this.lock.row(transaction, sessionId);
        const sealer = await this.sessionClients.sealer(transaction, known);
        this.lock.decide('amend', state);
        const day = localDay(occurredAt(dto.occurredAt, transaction.recordedAt), actor.timeZone);
        const place = sealedAsComplications(sessionId);
        const all = addedComplications(sealer.open(complicationsSealed, place), dto.complications, day);
        if (all === null) {
          throw invalidField(
            'complications',
            `All complications of a session together have at most ${longestComplicationsInAll} characters, which this would exceed. Shorten it.`,
          );
        }
        const session = await transaction.change(
          Session,
          'session',
          { studioId, id: sessionId },
          dto.version,
          { complicationsSealed: sealer.seal(all, place) },
        );
        transaction.note({ fields: ['complications'] });
        return writtenSession(session, known.client.reference);
      },
    );
  }
}
