import { Injectable } from '@nestjs/common';
import { ClientAccessLog } from '../../clients/client-access-log.service.js';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import { notFound } from '../../platform/problem.js';
import type { RecallKind, RecallState } from '../vocabulary.js';
import { ContactStates } from './contact-states.service.js';
import { Exposures } from './exposures.service.js';
import type { ClientRecallsView } from './exposures.views.js';

/** A client is rarely concerned by more than a few. */
const mostRecalls = 50;

interface RecallRow {
  recallId: string;
  title: string;
  kind: RecallKind;
  state: RecallState;
  openedAt: string;
}

/** The recalls by which a client was exposed; rehearsals are none. */
@Injectable()
export class ClientRecalls {
  constructor(
    private readonly database: Database,
    private readonly exposures: Exposures,
    private readonly contactStates: ContactStates,
    private readonly accessLog: ClientAccessLog,
  ) {}

  /** @throws Problem not-found */
  async of(actor: Actor, clientId: string): Promise<ClientRecallsView> {
    const { read } = this.database;
    const { studioId, timeZone } = actor;
    const [client] = await read('SELECT id FROM client WHERE studio_id = $1 AND id = $2', [
      studioId,
      clientId,
    ]);
    if (!client) throw notFound('client', clientId);
    await this.accessLog.note(actor, 'client trace', [clientId]);
    const recalls = await this.recallsOfProducts(studioId, clientId);
    const items: ClientRecallsView['items'] = [];
    for (const { recallId, ...recall } of recalls.slice(0, mostRecalls)) {
      const exposed = await this.exposures.ofClient(read, studioId, recallId, clientId);
      if (exposed === null) continue;
      const states = await this.contactStates.of(read, studioId, recallId, [exposed]);
      const { certainty, sessions, certainSessions, firstAt, lastAt } = exposed;
      items.push({
        recallId,
        ...recall,
        ...{ certainty, sessions, certainSessions },
        firstDay: localDay(firstAt, timeZone),
        lastDay: localDay(lastAt, timeZone),
        contactState: states.get(clientId)?.contactState ?? 'not tried',
        latestContact: states.get(clientId)?.latestContact ?? null,
      });
    }
    return { clientId, items, moreRecalls: recalls.length > mostRecalls };
  }

  /** Recalls with a lot of any product that touched the client or was blended into what did: no other can concern them. */
  private recallsOfProducts(studioId: string, clientId: string): Promise<RecallRow[]> {
    return this.database.read<RecallRow>(
      `WITH RECURSIVE used (lot_id) AS (
         SELECT lot_id FROM session_use WHERE studio_id = $1 AND client_id = $2
         UNION
         SELECT blend_parent.parent_lot_id FROM used CROSS JOIN blend_parent
         WHERE blend_parent.studio_id = $1 AND blend_parent.lot_id = used.lot_id),
       used_product (product_id) AS (
         SELECT DISTINCT lot.product_id FROM used CROSS JOIN lot
         WHERE lot.studio_id = $1 AND lot.id = used.lot_id),
       concerned (recall_id) AS (
         SELECT DISTINCT recall_lot.recall_id FROM used_product CROSS JOIN lot CROSS JOIN recall_lot
         WHERE lot.studio_id = $1 AND lot.product_id = used_product.product_id
           AND recall_lot.studio_id = $1 AND recall_lot.lot_id = lot.id)
       SELECT recall.id AS "recallId", recall.title, recall.kind, recall.state, recall.opened_at AS "openedAt"
       FROM concerned CROSS JOIN recall
       WHERE recall.studio_id = $1 AND recall.id = concerned.recall_id AND recall.kind = 'recall'
       ORDER BY recall.opened_at DESC, recall.id DESC LIMIT ${mostRecalls + 1}`,
      [studioId, clientId],
    );
  }
}
