import { Injectable } from '@nestjs/common';
import { microlitresOf } from '../catalogue/drop-size.js';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { type ContainerFact, ContainerFacts, type Read } from '../stock/container-facts.service.js';
import { Mix, MixComponent } from './mix.entity.js';
import { type MixAddition, mixTotals } from './mix-totals.js';
import type { AddToMixDto, StartMixDto } from './mixes.dto.js';
import type { CupView } from './mixes.views.js';
import { requireSetup } from './require-setup.service.js';
import { TrayLookUp } from './tray-look-up.service.js';

/** The mixes of a session: what was dropped into each single-use cup. Additions are kept, totals are sums. */
@Injectable()
export class Mixes {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly lookUp: TrayLookUp,
    private readonly containerFacts: ContainerFacts,
  ) {}

  async start(actor: Actor, sessionId: string, dto: StartMixDto): Promise<CupView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.start-mix',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        await transaction.lock('session', [sessionId]);
        const session = await this.lookUp.session(transaction.read, actor.studioId, sessionId);
        requireSetup(session.state);
        await transaction.insert(Mix, {
          studioId: actor.studioId,
          id: dto.id,
          sessionId,
          label: dto.label,
          occurredAt: occurredAt(dto.occurredAt, transaction.recordedAt),
          recordedAt: transaction.recordedAt,
        });
        return { id: dto.id, sessionId, label: dto.label, components: [], microlitres: 0 };
      },
    );
  }

  async add(actor: Actor, sessionId: string, mixId: string, dto: AddToMixDto): Promise<CupView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.add-to-mix',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, mixId, ...dto },
      },
      async (transaction) => {
        const read = transaction.read;
        await transaction.lock('session', [sessionId]);
        const session = await this.lookUp.session(read, actor.studioId, sessionId);
        requireSetup(session.state);
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
        const additions = await this.additions(read, actor.studioId, sessionId, mixId);
        const present = mixTotals(additions).find((total) => total.containerId === dto.containerId);
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
          drops: dto.microlitres === undefined ? (dto.drops ?? null) : null,
          microlitres,
          occurredAt: occurredAt(dto.occurredAt, transaction.recordedAt),
          recordedAt: transaction.recordedAt,
          personId: actor.personId,
          via: actor.via,
        });
        const [view] = await this.views(read, actor.studioId, sessionId, mixId);
        if (!view) throw notFound('mix in this session', mixId);
        return view;
      },
    );
  }

  async list(actor: Actor, sessionId: string): Promise<CupView[]> {
    const read: Read = (sql, parameters) => this.database.read(sql, parameters);
    await this.lookUp.session(read, actor.studioId, sessionId);
    return this.views(read, actor.studioId, sessionId);
  }

  /** The mixes of a session with their totals, in the order in which they were started. */
  async views(read: Read, studioId: string, sessionId: string, mixId?: string): Promise<CupView[]> {
    const mixes = await read<{ id: string; label: string }>(
      'SELECT id, label FROM mix WHERE studio_id = $1 AND session_id = $2 ORDER BY recorded_at, id',
      [studioId, sessionId],
    );
    const totals = mixTotals(await this.additions(read, studioId, sessionId, mixId));
    const facts = await this.containerFacts.load(read, studioId, {
      containerIds: totals.map((total) => total.containerId),
      ended: true,
    });
    const byId = new Map(facts.map((fact) => [fact.containerId, fact]));
    return mixes
      .filter((mix) => mixId === undefined || mix.id === mixId)
      .map((mix) => {
        const components = totals
          .filter((total) => total.mixId === mix.id)
          .map((total) => {
            const fact = byId.get(total.containerId);
            return {
              containerId: total.containerId,
              lotId: total.lotId,
              productId: fact?.productId ?? '',
              label: fact ? [fact.makerName, fact.productName, fact.shade ?? ''].join(' ').trim() : '',
              lotCode: fact?.code ?? null,
              drops: total.drops,
              microlitres: total.microlitres,
              isThinner: fact?.pigmentRole === 'thinner',
            };
          });
        return {
          id: mix.id,
          sessionId,
          label: mix.label,
          components,
          microlitres: components.reduce((sum, component) => sum + component.microlitres, 0),
        };
      });
  }

  /** Every addition to the mixes of a session, oldest first. */
  additions(read: Read, studioId: string, sessionId: string, mixId?: string): Promise<MixAddition[]> {
    const ofMix = mixId === undefined ? '' : ' AND mix_id = $3';
    return read<MixAddition>(
      `SELECT mix_id AS "mixId", container_id AS "containerId", lot_id AS "lotId", drops, microlitres
       FROM mix_component WHERE studio_id = $1 AND session_id = $2${ofMix} ORDER BY recorded_at, id`,
      mixId === undefined ? [studioId, sessionId] : [studioId, sessionId, mixId],
    );
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
