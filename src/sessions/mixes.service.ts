import { Injectable } from '@nestjs/common';
import { microlitresOf } from '../catalogue/drop-size.js';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { type ContainerFact, ContainerFacts } from '../stock/container-facts.service.js';
import { Mix, MixComponent } from './mix.entity.js';
import { MixReader } from './mix-reader.service.js';
import type { AddToMixDto, StartMixDto } from './mixes.dto.js';
import type { AddedToMixView, MixView } from './mixes.views.js';
import { refusedNow } from './refused-now.js';
import { SessionLock } from './session-lock.service.js';
import { TraySessions } from './tray-sessions.service.js';
import { trayThing } from './tray-thing.js';

/** The mixes of a session: what was dropped into each single-use cup. Additions are kept, what is in it is their sum. */
@Injectable()
export class Mixes {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly lock: SessionLock,
    private readonly sessions: TraySessions,
    private readonly mixReader: MixReader,
    private readonly containerFacts: ContainerFacts,
  ) {}

  async start(actor: Actor, sessionId: string, dto: StartMixDto): Promise<MixView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.start-mix',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        await this.lock.forStep(transaction, sessionId, 'use tray');
        const mix: Mix = {
          studioId: actor.studioId,
          id: dto.id,
          sessionId,
          label: dto.label,
          occurredAt: occurredAt(dto.occurredAt, transaction.recordedAt),
          recordedAt: transaction.recordedAt,
        };
        await transaction.insert(Mix, mix);
        const { id, label, occurredAt: startedAt } = mix;
        return { id, sessionId, label, occurredAt: startedAt, parts: [], microlitres: 0 };
      },
    );
  }

  async add(actor: Actor, sessionId: string, mixId: string, dto: AddToMixDto): Promise<AddedToMixView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.add-to-mix',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, mixId, ...dto },
      },
      async (transaction) => {
        const { read } = transaction;
        const session = await this.lock.forStep(transaction, sessionId, 'use tray');
        const mix = await transaction.manager.findOneBy(Mix, {
          studioId: actor.studioId,
          sessionId,
          id: mixId,
        });
        if (!mix) throw notFound('mix in this session', mixId);
        const [fact] = await this.containerFacts.load(read, actor.studioId, {
          containerIds: [dto.containerId],
          ended: true,
        });
        if (!fact) throw notFound('container', dto.containerId);
        await this.requireOnTray(transaction, sessionId, fact);
        const microlitres = amountOf(dto, fact);
        const happenedAt = occurredAt(dto.occurredAt, transaction.recordedAt);
        const present = (await this.mixReader.contents(read, actor.studioId, [sessionId])).find(
          (content) => content.mixId === mixId && content.containerId === dto.containerId,
        );
        if ((present?.microlitres ?? 0) + microlitres < 0) {
          throw new Problem(
            409,
            'unusable-quantity',
            `Only ${present?.microlitres ?? 0} µL of this bottle are in the mix; no more can be taken back.`,
          );
        }
        await transaction.insert(MixComponent, {
          studioId: actor.studioId,
          id: dto.id,
          mixId,
          sessionId,
          lotId: fact.lotId,
          containerId: fact.containerId,
          drops: dto.drops ?? null,
          microlitres,
          occurredAt: happenedAt,
          recordedAt: transaction.recordedAt,
          personId: actor.personId,
          via: actor.via,
        });
        const views = await this.mixReader.views(read, actor.studioId, [sessionId]);
        const view = views.get(sessionId)?.find(({ id }) => id === mixId);
        if (!view) throw notFound('mix in this session', mixId);
        // Nothing that happened is refused; what is taken back needs no warning.
        const thing = trayThing(fact, session.assumedOpenedLife, []);
        const refused = microlitres > 0 ? refusedNow(thing, happenedAt, actor.timeZone) : [];
        return { ...view, warnings: refused.map(({ message }) => message) };
      },
    );
  }

  async list(actor: Actor, sessionId: string): Promise<MixView[]> {
    const { read } = this.database;
    await this.sessions.load(read, actor.studioId, sessionId);
    return (await this.mixReader.views(read, actor.studioId, [sessionId])).get(sessionId) ?? [];
  }

  private async requireOnTray(
    transaction: Transaction,
    sessionId: string,
    fact: ContainerFact,
  ): Promise<void> {
    if (fact.stockForm !== 'container' || fact.kind !== 'pigment') {
      throw new Problem(
        409,
        'wrong-state',
        `${fact.productName} is no pigment or thinner; only those are dropped into a mix.`,
      );
    }
    const lines = await transaction.query(
      `SELECT id FROM tray_line WHERE studio_id = $1 AND session_id = $2 AND container_id = $3 AND state = 'on tray' LIMIT 1`,
      [transaction.studioId, sessionId, fact.containerId],
    );
    if (lines.length === 0) {
      throw new Problem(
        409,
        'wrong-state',
        'This bottle is not on the tray of this session. Scan it first, so that its dates and holds are judged.',
      );
    }
  }
}

/** Signed microlitres of an addition, reckoned from drops where no volume was given. */
function amountOf(dto: AddToMixDto, fact: ContainerFact): number {
  const microlitres = microlitresOf(dto, fact.dropMicrolitres) ?? 0;
  if (microlitres !== 0) return microlitres;
  const field = dto.microlitres === undefined ? 'drops' : 'microlitres';
  throw invalidField(field, `${field} is 0; nothing would be added`);
}
