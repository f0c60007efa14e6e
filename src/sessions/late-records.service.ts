import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { Clients } from '../clients/clients.service.js';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { maximumLateRecordDays, occurredAt } from '../platform/occurred-at.js';
import { notFound } from '../platform/problem.js';
import type { RecordLateSessionDto } from './late-records.dto.js';
import type { AmendedSessionView } from './late-records.views.js';
import { LateUses } from './late-uses.service.js';
import { Procedures } from './procedures.service.js';
import { complicationsPlace } from './sealed-places.js';
import { Session } from './session.entity.js';
import { blankSession, SessionPlanning, sealDetail } from './session-planning.service.js';
import type { SessionUse } from './session-use.entity.js';
import { UseRecorder } from './use-recorder.service.js';
import { treatedClient } from './walk-in.service.js';

/** Records a session that took place earlier, from memory or from paper. Recording never refuses the truth. */
@Injectable()
export class LateRecords {
  constructor(
    private readonly transactions: Transactions,
    private readonly clients: Clients,
    private readonly procedures: Procedures,
    private readonly planning: SessionPlanning,
    private readonly lateUses: LateUses,
    private readonly recorder: UseRecorder,
  ) {}

  async record(actor: Actor, dto: RecordLateSessionDto): Promise<AmendedSessionView> {
    const { studioId } = actor;
    const treated = await treatedClient(this.clients, studioId, dto);
    return this.transactions.write(
      { ...actor, via: dto.source === 'paper' ? 'paper' : actor.via },
      { id: dto.id, action: 'sessions.record-late', subject: { kind: 'session', id: dto.id }, content: dto },
      async (transaction) => {
        const at = occurredAt(dto.occurredAt, transaction.recordedAt, maximumLateRecordDays);
        const procedure = await this.procedures.find(transaction, dto.procedureId);
        await requirePeople(transaction, [dto.artistId, dto.signedBy, ...appliedBy(dto.uses)]);
        const known =
          'known' in treated ? treated.known : await this.clients.make(transaction, uuidv7(), treated.fresh);
        const { client, sealer } = known;
        if (!sealer) throw notFound('client', client.id);
        const followed = await this.planning.followed(transaction, {
          ...dto,
          sessionId: dto.id,
          clientId: client.id,
        });
        const complications = dto.complications === null ? 'none' : (dto.complications ?? null);
        const session: Session = {
          ...blankSession(studioId, dto.id, transaction.recordedAt),
          clientId: client.id,
          artistId: dto.artistId,
          procedureId: dto.procedureId,
          visitKind: dto.visitKind,
          bodyPlace: dto.bodyPlace ?? procedure.bodyPlace,
          bodyPlaceDetailSealed: sealDetail(known, dto.id, dto.bodyPlaceDetail ?? null),
          state: 'completed',
          plannedStart: at,
          inSetupAt: at,
          completedAt: at,
          followsSessionId: followed.followsSessionId,
          recordedFrom: dto.source,
          signedBy: dto.signedBy,
          signedAt: transaction.recordedAt,
          complicationsSealed: sealer.seal(complications, complicationsPlace(dto.id)),
        };
        await transaction.insert(Session, session);
        const { uses, madeLotIds } = await this.lateUses.prepare(transaction, dto.uses, at);
        const recorded = await this.recorder.record(
          transaction,
          { id: session.id, clientId: client.id, sealer },
          uses,
        );
        return amended(session, client.reference, recorded, madeLotIds);
      },
    );
  }
}

export function amended(
  session: Session,
  clientReference: string,
  uses: readonly SessionUse[],
  madeLotIds: string[],
): AmendedSessionView {
  return {
    id: session.id,
    state: 'completed',
    version: session.version,
    clientId: session.clientId,
    clientReference,
    followsSessionId: session.followsSessionId,
    uses: uses.map(({ id, lotId, containerId, mixId, pieces, microlitres, againstRefusal }) => ({
      id,
      lotId,
      containerId,
      mixId,
      pieces,
      microlitres,
      againstRefusal: againstRefusal ?? [],
    })),
    madeLotIds,
  };
}

/** Who put anaesthetics on. */
export function appliedBy(uses: readonly { appliedBy?: string }[]): string[] {
  return uses.flatMap((use) => use.appliedBy ?? []);
}

/**
 * That people are known, whether or not they still work here.
 * @throws Problem not-found
 */
export async function requirePeople(transaction: Transaction, named: readonly string[]): Promise<void> {
  const ids = [...new Set(named)];
  if (ids.length === 0) return;
  const rows = await transaction.query<{ id: string }>(
    `SELECT id FROM person WHERE studio_id = $1 AND id IN (${ids.map((_, index) => `$${index + 2}`).join(', ')})`,
    [transaction.studioId, ...ids],
  );
  const missing = ids.find((id) => !rows.some((row) => row.id === id));
  if (missing !== undefined) throw notFound('person', missing);
}
