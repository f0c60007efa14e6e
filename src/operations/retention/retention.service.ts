import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { decideErasure } from '../../clients/erasure-decision.js';
import { ErasureList } from '../../clients/erasure-list.service.js';
import { Erasures } from '../../clients/erasures.service.js';
import type { ErasureAnswerView } from '../../clients/erasures.views.js';
import { type ClientStanding, StandingOfClients } from '../../clients/standing-of-clients.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import type { PageDto } from '../../platform/request.dto.js';
import type { CarryOutRetentionDto } from './retention.dto.js';
import type {
  CarriedOutRetentionView,
  ClientRetentionPageView,
  ClientRetentionView,
} from './retention.views.js';

/**
 * Clients whose record need not be kept any longer. The end of retention is a floor, so nothing happens by itself: a
 * person looks at the list and says who is to be erased.
 */
@Injectable()
export class Retention {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly standing: StandingOfClients,
    private readonly erasures: Erasures,
    private readonly erasureList: ErasureList,
  ) {}

  /** How every client stands who was not erased, those who may be and the others with the reasons. Changes nothing. */
  async list(actor: Actor, page: PageDto): Promise<ClientRetentionPageView> {
    const { studioId } = actor;
    const limit = page.limit ?? defaultPageSize;
    await refuseUnknownStart(this.database.read, 'client', studioId, page.after);
    const clients = await this.database.read<ClientStanding['client']>(
      `SELECT id, reference, created_at AS "createdAt" FROM client
       WHERE studio_id = $1 AND erased_at IS NULL AND id > $2 ORDER BY id LIMIT $3`,
      [studioId, page.after ?? '', limit + 1],
    );
    const { shown, next } = pageOf(clients, limit, (client) => client.id);
    const standings = await this.standing.of(this.database.read, actor, shown, this.clock.now());
    return { items: standings.map(viewOf), next };
  }

  /** Erases those who are named, in one transaction; who may not be is refused with the reasons. */
  async carryOut(actor: Actor, dto: CarryOutRetentionDto): Promise<CarriedOutRetentionView> {
    const { studioId } = actor;
    this.erasureList.requireWritable();
    // In one order for all, as they are locked.
    const clientIds = [...dto.clientIds].sort();
    const answers = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'operations.carry-out-retention',
        subject: { kind: 'studio', id: studioId },
        content: dto,
      },
      async (transaction) => {
        const given: ErasureAnswerView[] = [];
        for (const clientId of clientIds) {
          const wish = { id: uuidv7(), clientId, ground: 'retention over' as const, overrides: [] };
          given.push(await this.erasures.answer(transaction, wish));
        }
        return given;
      },
    );
    await this.erasures.settle(studioId, answers);
    return { answers };
  }
}

function viewOf({ client, openSessionIds, facts }: ClientStanding): ClientRetentionView {
  const { answer, obstacles, span } = decideErasure('retention over', [], facts);
  return {
    clientId: client.id,
    clientReference: client.reference,
    lastRecordOn: facts.lastRecordOn,
    keptThrough: span?.keptThrough ?? null,
    erasable: answer === 'erased' && openSessionIds.length === 0,
    obstacles,
    openSessionIds,
  };
}
