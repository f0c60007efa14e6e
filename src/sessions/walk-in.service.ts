import { Injectable } from '@nestjs/common';
import { TreatedClients } from '../clients/treated-clients.service.js';
import { People } from '../identity/people.service.js';
import type { Actor } from '../platform/actor.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { NewSessions } from './new-sessions.service.js';
import { Procedures } from './procedures.service.js';
import { ProspectJudge } from './prospects/prospect-judge.service.js';
import type { WalkInDto } from './sessions.dto.js';
import type { WrittenSessionView } from './sessions.views.js';
import { writtenSession } from './written-session.js';

/** Begins a session of someone who is here now, in one call: the client, if new, and the session in setup. */
@Injectable()
export class WalkIns {
  constructor(
    private readonly transactions: Transactions,
    private readonly treatedClients: TreatedClients,
    private readonly people: People,
    private readonly procedures: Procedures,
    private readonly newSessions: NewSessions,
    private readonly prospects: ProspectJudge,
  ) {}

  async begin(actor: Actor, dto: WalkInDto): Promise<WrittenSessionView> {
    const treated = await this.treatedClients.choose(actor.studioId, dto);
    return this.transactions.write(
      actor,
      { id: dto.id, action: 'sessions.walk-in', subject: { kind: 'session', id: dto.id }, content: dto },
      async (transaction) => {
        const startedAt = occurredAt(dto.occurredAt, transaction.recordedAt);
        const procedure = await this.procedures.offered(transaction, dto.procedureId);
        await this.people.require(transaction, [dto.artistId], { atWork: true });
        const known = await this.treatedClients.inside(transaction, treated);
        const { session, followsBecause } = await this.newSessions.add(transaction, known, procedure, dto, {
          state: 'in setup',
          plannedStart: startedAt,
          inSetupAt: startedAt,
        });
        await this.prospects.mark(transaction);
        return writtenSession(session, known.client.reference, followsBecause);
      },
    );
  }
}
