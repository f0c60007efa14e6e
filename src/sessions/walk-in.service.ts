import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { NewClientDto } from '../clients/clients.dto.js';
import { Clients, erased, type KnownClient } from '../clients/clients.service.js';
import type { Actor } from '../platform/actor.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField } from '../platform/problem.js';
import { Session } from './session.entity.js';
import { blankSession, SessionPlanning, sealDetail, written } from './session-planning.service.js';
import type { WalkInDto } from './sessions.dto.js';
import type { WrittenSessionView } from './sessions.views.js';

/** Begins a session of someone who is here now, in one call: the client, if new, and the session in setup. */
@Injectable()
export class WalkIns {
  constructor(
    private readonly transactions: Transactions,
    private readonly clients: Clients,
    private readonly planning: SessionPlanning,
  ) {}

  async begin(actor: Actor, dto: WalkInDto): Promise<WrittenSessionView> {
    const { studioId } = actor;
    const treated = await treatedClient(this.clients, studioId, dto);
    return this.transactions.write(
      actor,
      { id: dto.id, action: 'sessions.walk-in', subject: { kind: 'session', id: dto.id }, content: dto },
      async (transaction) => {
        const startedAt = occurredAt(dto.occurredAt, transaction.recordedAt);
        const procedure = await this.planning.offered(transaction, dto.procedureId);
        await this.planning.refuseAbsentArtist(transaction, dto.artistId);
        const known: KnownClient =
          'known' in treated ? treated.known : await this.clients.make(transaction, uuidv7(), treated.fresh);
        const clientId = known.client.id;
        const followed = await this.planning.followed(transaction, { ...dto, sessionId: dto.id, clientId });
        const session: Session = {
          ...blankSession(studioId, dto.id, transaction.recordedAt),
          clientId,
          artistId: dto.artistId,
          procedureId: dto.procedureId,
          visitKind: dto.visitKind,
          bodyPlace: dto.bodyPlace ?? procedure.bodyPlace,
          bodyPlaceDetailSealed: sealDetail(known, dto.id, dto.bodyPlaceDetail ?? null),
          state: 'in setup',
          plannedStart: startedAt,
          inSetupAt: startedAt,
          followsSessionId: followed.followsSessionId,
        };
        await transaction.insert(Session, session);
        return written(session, known.client.reference, followed.followsBecause);
      },
    );
  }
}

/** A client who is known, or one who becomes a client by this very write. */
export type TreatedClient = { known: KnownClient } | { fresh: NewClientDto };

/**
 * Who is treated. Call before the transaction.
 * @throws Problem invalid-fields when neither or both are given; not-found; wrong-state when the client was erased
 */
export async function treatedClient(
  clients: Clients,
  studioId: string,
  given: { clientId?: string; client?: NewClientDto },
): Promise<TreatedClient> {
  const { clientId, client } = given;
  if (clientId === undefined && client !== undefined) return { fresh: client };
  if (clientId !== undefined && client === undefined) {
    const known = await clients.known(studioId, clientId);
    if (!known.sealer) throw erased(clientId);
    return { known };
  }
  throw invalidField(
    'clientId',
    `${client === undefined ? 'Neither' : 'Both'} clientId and client were given. Give exactly one: the id of a known client, or the name of a new one.`,
  );
}
