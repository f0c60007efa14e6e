import { Injectable } from '@nestjs/common';
import type { Read, SqlValue } from '../../platform/database/database.js';
import type { VisitKind } from '../../sessions/vocabulary.js';
import type { Certainty } from './exposure-certainty.js';
import { ExposureQuestions } from './exposure-question.service.js';
import type { ExposureTotalsView } from './exposures.views.js';

/** A client whom a lot of a recall touched, or may have. */
export interface ExposedClient {
  clientId: string;
  certainty: Certainty;
  /** When they were erased: who they are is not known any more. */
  erasedAt: string | null;
  sessions: number;
  certainSessions: number;
  uses: number;
  /** Instants of the first and last exposure. */
  firstAt: string;
  lastAt: string;
}

type ClientRow = Omit<ExposedClient, 'certainty'> & { certain: number };

interface TotalsRow {
  clients: number;
  certainClients: number;
  erasedClients: number;
  reversedUses: number;
  visitKind: VisitKind | null;
  sessions: number;
  certainSessions: number;
  uses: number;
  certainUses: number;
  openLotUses: number;
  unknownAmountUses: number;
  clientsOfKind: number;
}

/** `exposed_session (session_id, client_id, …)` and `exposed_client (client_id, …)`, to follow `exposed_use`. */
export const exposedSessionsAndClients = `exposed_session AS (
    SELECT session_id, client_id, min(occurred_at) AS first_at, max(certain) AS certain, count(*) AS uses,
      sum(certain) AS certain_uses, sum(by_open_lot) AS open_lot_uses, sum(unknown_amount) AS unknown_amount_uses,
      max(occurred_at) AS last_at
    FROM exposed_use GROUP BY session_id, client_id),
  exposed_client AS (
    SELECT client_id, max(certain) AS certain, count(*) AS sessions, sum(certain) AS certain_sessions,
      sum(uses) AS uses, min(first_at) AS first_at, max(last_at) AS last_at
    FROM exposed_session GROUP BY client_id)`;

/**
 * Whom the lots of a recall touched, directly, in a mix or in a house blend of any depth, at any kind of visit. Guarantees:
 * nothing is left out; each question is answered by the database in one, however many uses there are; uses recorded by
 * mistake expose nobody. Works inside a transaction and outside.
 */
@Injectable()
export class Exposures {
  constructor(private readonly questions: ExposureQuestions) {}

  /** How many there are. A recall that is not known has none. */
  async totals(read: Read, studioId: string, recallId: string): Promise<ExposureTotalsView> {
    const { tables, parameters } = await this.questions.of(read, studioId, recallId);
    const rows = await read<TotalsRow>(
      `${tables}, ${exposedSessionsAndClients},
       whole AS (
         SELECT count(*) AS clients, coalesce(sum(exposed_client.certain), 0) AS certain_clients,
           count(client.erased_at) AS erased_clients, (SELECT count(*) FROM reversed_exposure) AS reversed_uses
         FROM exposed_client LEFT JOIN client ON client.studio_id = $1 AND client.id = exposed_client.client_id),
       of_kind AS (
         SELECT session.visit_kind, count(*) AS sessions, sum(exposed_session.certain) AS certain_sessions,
           sum(uses) AS uses, sum(certain_uses) AS certain_uses, sum(open_lot_uses) AS open_lot_uses,
           sum(unknown_amount_uses) AS unknown_amount_uses,
           count(DISTINCT exposed_session.client_id) AS clients_of_kind
         FROM exposed_session CROSS JOIN session
         WHERE session.studio_id = $1 AND session.id = exposed_session.session_id
         GROUP BY session.visit_kind)
       SELECT clients, certain_clients AS "certainClients", erased_clients AS "erasedClients",
         reversed_uses AS "reversedUses", visit_kind AS "visitKind", coalesce(sessions, 0) AS sessions,
         coalesce(certain_sessions, 0) AS "certainSessions", coalesce(uses, 0) AS uses,
         coalesce(certain_uses, 0) AS "certainUses", coalesce(open_lot_uses, 0) AS "openLotUses",
         coalesce(unknown_amount_uses, 0) AS "unknownAmountUses", coalesce(clients_of_kind, 0) AS "clientsOfKind"
       FROM whole LEFT JOIN of_kind ON 1 = 1
       ORDER BY visit_kind`,
      parameters,
    );
    return totalsFrom(rows);
  }

  /** Every exposed client, the certain ones first, then the latest exposed. */
  async clients(read: Read, studioId: string, recallId: string): Promise<ExposedClient[]> {
    const { tables, parameters } = await this.questions.of(read, studioId, recallId);
    return this.chosenClients(read, tables, parameters, '', '');
  }

  /** One client's exposure; null: none is known. */
  async ofClient(
    read: Read,
    studioId: string,
    recallId: string,
    clientId: string,
  ): Promise<ExposedClient | null> {
    const { tables, parameters } = await this.questions.of(read, studioId, recallId, clientId);
    const [client] = await this.chosenClients(read, tables, parameters, '', '');
    return client ?? null;
  }

  /**
   * A page of the exposed clients in the order of `clients`.
   * @returns null when `after` is not among them
   */
  async clientPage(
    read: Read,
    studioId: string,
    recallId: string,
    { limit, after, certainty }: { limit: number; after?: string; certainty?: Certainty },
  ): Promise<ExposedClient[] | null> {
    const { tables, parameters } = await this.questions.of(read, studioId, recallId);
    const put = (value: SqlValue) => `$${parameters.push(value)}`;
    const conditions: string[] = [];
    if (certainty !== undefined) {
      conditions.push(`exposed_client.certain = ${certainty === 'certain' ? 1 : 0}`);
    }
    let start = '';
    if (after !== undefined) {
      start = put(after);
      conditions.push(`(exposed_client.certain, exposed_client.last_at, exposed_client.client_id) < (
        SELECT last.certain, last.last_at, last.client_id FROM exposed_client AS last WHERE last.client_id = ${start})`);
    }
    const where = conditions.length === 0 ? '' : `WHERE ${conditions.join(' AND ')}`;
    const found = await this.chosenClients(read, tables, parameters, where, `LIMIT ${put(limit)}`);
    if (found.length > 0 || after === undefined) return found;
    const known = await this.ofClient(read, studioId, recallId, after);
    return known === null ? null : found;
  }

  private async chosenClients(
    read: Read,
    tables: string,
    parameters: readonly SqlValue[],
    where: string,
    limit: string,
  ): Promise<ExposedClient[]> {
    const rows = await read<ClientRow>(
      `${tables}, ${exposedSessionsAndClients},
       chosen AS (
         SELECT * FROM exposed_client ${where}
         ORDER BY certain DESC, last_at DESC, client_id DESC ${limit})
       SELECT chosen.client_id AS "clientId", chosen.certain, client.erased_at AS "erasedAt", chosen.sessions,
         chosen.certain_sessions AS "certainSessions", chosen.uses, chosen.first_at AS "firstAt",
         chosen.last_at AS "lastAt"
       FROM chosen CROSS JOIN client WHERE client.studio_id = $1 AND client.id = chosen.client_id
       ORDER BY chosen.certain DESC, chosen.last_at DESC, chosen.client_id DESC`,
      parameters,
    );
    return rows.map(({ certain, ...row }) => ({ ...row, certainty: certain === 1 ? 'certain' : 'possible' }));
  }
}

function totalsFrom(rows: readonly TotalsRow[]): ExposureTotalsView {
  const sum = (
    column: 'sessions' | 'certainSessions' | 'uses' | 'certainUses' | 'openLotUses' | 'unknownAmountUses',
  ) => rows.reduce((total, row) => total + row[column], 0);
  const [whole] = rows;
  if (!whole) throw new Error('The totals of exposures have no row.');
  const { clients, certainClients, erasedClients, reversedUses } = whole;
  const [sessions, certainSessions] = [sum('sessions'), sum('certainSessions')];
  const [uses, certainUses] = [sum('uses'), sum('certainUses')];
  return {
    ...{ clients, certainClients, possibleClients: clients - certainClients, erasedClients },
    ...{ sessions, certainSessions, possibleSessions: sessions - certainSessions },
    ...{ uses, certainUses, possibleUses: uses - certainUses, openLotUses: sum('openLotUses') },
    ...{ unknownAmountUses: sum('unknownAmountUses'), reversedUses },
    byVisitKind: rows.flatMap(({ visitKind, sessions: ofKind, clientsOfKind }) =>
      visitKind === null ? [] : [{ visitKind, sessions: ofKind, clients: clientsOfKind }],
    ),
  };
}
