import { Injectable, Logger } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database, placeholders } from '../platform/database/database.js';
import { OldPages } from '../platform/database/old-pages.service.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { DataKeys } from '../platform/encryption/data-keys.service.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { notFound, Problem } from '../platform/problem.js';
import type { PageDto } from '../platform/request.dto.js';
import { Client } from './client.entity.js';
import { ClientEraser } from './client-eraser.service.js';
import {
  decideErasure,
  type ErasureGround,
  type ErasureObstacle,
  type ErasureOverride,
} from './erasure-decision.js';
import { type Erasure, ErasureList } from './erasure-list.service.js';
import { ErasureRequest } from './erasure-request.entity.js';
import type { AskErasureDto } from './erasures.dto.js';
import type { ErasureAnswerPageView, ErasureAnswerView } from './erasures.views.js';
import { StandingOfClients } from './standing-of-clients.service.js';
import { TreatmentRecords } from './treatment-records.service.js';

export interface ErasureWish {
  /** Id of the request. */
  id: string;
  clientId: string;
  ground: ErasureGround;
  overrides: ErasureOverride[];
}

/**
 * Answers wishes for erasure. Guarantees: every answer is recorded, a refusal with its grounds; before "erased" is
 * answered the key is destroyed, the list of erasures is on the disk and this process has forgotten the key.
 */
@Injectable()
export class Erasures {
  private readonly logger = new Logger('erasures');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly dataKeys: DataKeys,
    private readonly oldPages: OldPages,
    private readonly treatmentRecords: TreatmentRecords,
    private readonly standing: StandingOfClients,
    private readonly eraser: ClientEraser,
    private readonly list: ErasureList,
  ) {}

  async ask(actor: Actor, clientId: string, dto: AskErasureDto): Promise<ErasureAnswerView> {
    const { id, ground, overrides = [] } = dto;
    this.list.requireWritable();
    const answer = await this.transactions.write(
      actor,
      {
        id,
        action: 'clients.answer-erasure',
        subject: { kind: 'client', id: clientId },
        content: { clientId, ...dto },
      },
      (transaction) => this.answer(transaction, { id, clientId, ground, overrides }),
    );
    await this.settle(actor.studioId, [answer]);
    return answer;
  }

  /**
   * Decides and, unless refused, erases, in the caller's transaction; call `settle` once it is committed.
   * @throws Problem not-found; wrong-state when the client was erased or has a visit ahead; decision-needed when the
   *   studio has not said how long it keeps records
   */
  async answer(transaction: Transaction, wish: ErasureWish): Promise<ErasureAnswerView> {
    const { studioId, recordedAt, actor } = transaction;
    const { id, clientId, ground, overrides } = wish;
    await transaction.lock('client', [clientId]);
    const client = await transaction.manager.findOneBy(Client, { studioId, id: clientId });
    if (!client) throw notFound('client', clientId);
    if (client.erasedAt !== null) throw erasedAlready(client.erasedAt);
    await this.treatmentRecords.lock(transaction, clientId);
    const [standing] = await this.standing.of(transaction.read, actor, [client], recordedAt);
    if (!standing) throw new Error(`Nothing is known of the client ${clientId}.`);
    refuseOpenVisits(standing.openSessionIds);
    const { answer, obstacles } = decideErasure(ground, overrides, standing.facts);
    refuseUndecided(obstacles);
    const request: ErasureRequest = {
      studioId,
      id,
      clientId,
      ground,
      answer,
      obstacles,
      overrides,
      dataKeyId: client.dataKeyId,
      recordedAt,
      personId: actor.personId,
      via: actor.via,
    };
    await transaction.insert(ErasureRequest, request);
    if (answer === 'erased') await this.eraser.erase(transaction, client, recordedAt);
    return viewOf(request, client.reference);
  }

  /** What follows an erasure once it is committed. Done again it changes nothing more. */
  async settle(studioId: string, answers: readonly ErasureAnswerView[]): Promise<void> {
    const clientIds = answers.flatMap(({ answer, clientId }) => (answer === 'erased' ? [clientId] : []));
    if (clientIds.length === 0) return;
    const erasures = await this.database.read<Erasure>(
      `SELECT studio_id AS "studioId", id AS "clientId", data_key_id AS "dataKeyId", erased_at AS "erasedAt"
       FROM client WHERE studio_id = $1 AND erased_at IS NOT NULL AND id IN (${placeholders(clientIds)})`,
      [studioId, ...clientIds],
    );
    for (const { dataKeyId } of erasures) this.dataKeys.forget(studioId, dataKeyId);
    try {
      this.list.add(erasures);
    } catch (error) {
      this.logger.error(`${this.list.file} cannot be written: ${String(error)}`);
      throw new Problem(
        503,
        'erasure-not-listed',
        `The erasure is carried out, but could not be written to ${this.list.file}: a backup restored now would bring it back. Make room or set its rights, then send this request again.`,
      );
    }
    await this.oldPages.drop();
  }

  /** Every wish for a client's erasure and its answer, the latest first. */
  async answers(actor: Actor, clientId: string, page: PageDto): Promise<ErasureAnswerPageView> {
    const { studioId } = actor;
    const limit = page.limit ?? defaultPageSize;
    const client = await this.database.reader.manager.findOneBy(Client, { studioId, id: clientId });
    if (!client) throw notFound('client', clientId);
    await refuseUnknownStart(this.database.read, 'erasure_request', studioId, page.after);
    const before =
      page.after === undefined
        ? ''
        : ` AND (recorded_at, id) < (SELECT last.recorded_at, last.id FROM erasure_request AS last
            WHERE last.studio_id = $1 AND last.id = $4)`;
    const rows = await this.database.read<AnswerRow>(
      `SELECT id, client_id AS "clientId", ground, answer, obstacles, recorded_at AS "recordedAt",
         person_id AS "personId"
       FROM erasure_request WHERE studio_id = $1 AND client_id = $2${before}
       ORDER BY recorded_at DESC, id DESC LIMIT $3`,
      [studioId, clientId, limit + 1, ...(page.after === undefined ? [] : [page.after])],
    );
    const { shown, next } = pageOf(rows, limit, (row) => row.id);
    return {
      items: shown.map((row) =>
        viewOf({ ...row, obstacles: JSON.parse(row.obstacles) as ErasureObstacle[] }, client.reference),
      ),
      next,
    };
  }
}

type Answered = Omit<ErasureAnswerView, 'clientReference'>;
type AnswerRow = Omit<Answered, 'obstacles'> & { obstacles: string };

function viewOf(answered: Answered, clientReference: string): ErasureAnswerView {
  const { id, clientId, ground, answer, obstacles, recordedAt, personId } = answered;
  return { id, clientId, clientReference, ground, answer, obstacles, recordedAt, personId };
}

function erasedAlready(erasedAt: string): Problem {
  return new Problem(
    409,
    'wrong-state',
    `This client was erased on ${erasedAt}; there is nothing left to erase.`,
  );
}

/** What is to be recorded of them soon could not be sealed any more. */
function refuseOpenVisits(sessionIds: readonly string[]): void {
  if (sessionIds.length === 0) return;
  throw new Problem(
    409,
    'wrong-state',
    `This client has ${sessionIds.length === 1 ? 'a session' : `${sessionIds.length} sessions`} planned or under way: ${sessionIds.slice(0, 5).join(', ')}. Complete or cancel ${sessionIds.length === 1 ? 'it' : 'them'} first, then ask again.`,
    { sessionIds },
  );
}

/** Not an answer to the client: the studio has to say something first. */
function refuseUndecided(obstacles: readonly ErasureObstacle[]): void {
  const undecided = obstacles.find(({ kind }) => kind === 'retention not chosen');
  if (undecided) throw new Problem(409, 'decision-needed', undecided.message);
}
