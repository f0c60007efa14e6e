import { Injectable } from '@nestjs/common';
import { TreatedClients } from '../clients/treated-clients.service.js';
import { People } from '../identity/people.service.js';
import type { Actor } from '../platform/actor.js';
import { Transactions } from '../platform/database/transactions.js';
import { maximumLateRecordDays, occurredAt } from '../platform/occurred-at.js';
import type { RecordLateSessionDto } from './late-records.dto.js';
import type { RecordedUsesView } from './late-records.views.js';
import { LateUses } from './late-uses.service.js';
import { NewSessions } from './new-sessions.service.js';
import { bookedTime } from './plan-times.js';
import { Procedures } from './procedures.service.js';
import { sealedAsComplications } from './sealing-contexts.js';
import { sealerOf } from './session-clients.service.js';
import { usableTime } from './session-planning.service.js';
import { UseRecorder } from './use-recorder.service.js';
import { writtenSession, writtenUse } from './written-session.js';

/** Records a session that took place earlier, from memory or from paper. Recording never refuses the truth. */
@Injectable()
export class LateRecords {
  constructor(
    private readonly transactions: Transactions,
    private readonly treatedClients: TreatedClients,
    private readonly people: People,
    private readonly procedures: Procedures,
    private readonly newSessions: NewSessions,
    private readonly lateUses: LateUses,
    private readonly recorder: UseRecorder,
  ) {}

  async record(actor: Actor, dto: RecordLateSessionDto): Promise<RecordedUsesView> {
    const treated = await this.treatedClients.choose(actor.studioId, dto);
    return this.transactions.write(
      { ...actor, via: dto.source === 'paper' ? 'paper' : actor.via },
      { id: dto.id, action: 'sessions.record-late', subject: { kind: 'session', id: dto.id }, content: dto },
      async (transaction) => {
        const at = occurredAt(dto.occurredAt, transaction.recordedAt, maximumLateRecordDays);
        const procedure = await this.procedures.find(transaction, dto.procedureId);
        const appliedBy = dto.uses.flatMap((use) => use.appliedBy ?? []);
        await this.people.require(transaction, [dto.artistId, dto.signedBy, ...appliedBy]);
        const known = await this.treatedClients.inside(transaction, treated);
        const sealer = sealerOf(known);
        const complications = dto.complications === null ? 'none' : (dto.complications ?? null);
        const { session } = await this.newSessions.add(transaction, known, procedure, dto, {
          state: 'completed',
          bookedAt:
            dto.bookedAt == null ? null : usableTime(bookedTime(dto.bookedAt, transaction.recordedAt)),
          plannedStart: at,
          inSetupAt: at,
          completedAt: at,
          recordedFrom: dto.source,
          signedBy: dto.signedBy,
          signedAt: transaction.recordedAt,
          complicationsSealed: sealer.seal(complications, sealedAsComplications(dto.id)),
        });
        const prepared = await this.lateUses.prepare(transaction, session.id, dto.uses, at);
        const recorded = await this.recorder.record(
          transaction,
          { id: session.id, clientId: session.clientId, sealing: sealer },
          prepared.uses,
        );
        const { followsBecause: _, ...written } = writtenSession(session, known.client.reference);
        const { madeLots, warnings } = prepared;
        warnings.push(...(await this.lateUses.catchMade(transaction, madeLots)));
        const madeLotIds = madeLots.map(({ id }) => id);
        return { ...written, state: 'completed', uses: recorded.map(writtenUse), madeLotIds, warnings };
      },
    );
  }
}
