import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { notFound, Problem } from '../platform/problem.js';
import { MixReader } from './mix-reader.service.js';
import { SessionLock } from './session-lock.service.js';
import { SessionWastes } from './session-wastes.service.js';
import type { TakeOffDto } from './tray.dto.js';
import type { TakenOffView } from './tray.views.js';
import { TrayLine } from './tray-line.entity.js';

/** Takes things off a tray again. */
@Injectable()
export class TrayRemoval {
  constructor(
    private readonly transactions: Transactions,
    private readonly lock: SessionLock,
    private readonly mixReader: MixReader,
    private readonly wastes: SessionWastes,
  ) {}

  /** Takes a line off the tray: unopened, its piece is free for others; opened, it is wasted. */
  async takeOff(actor: Actor, sessionId: string, lineId: string, dto: TakeOffDto): Promise<TakenOffView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.take-off-tray',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, lineId, ...dto },
      },
      async (transaction) => {
        await this.lock.forStep(transaction, sessionId, 'use tray');
        const { studioId } = actor;
        const key = { studioId, sessionId, id: lineId, state: 'on tray' as const };
        const line = await transaction.manager.findOneBy(TrayLine, key);
        if (!line) throw notFound('line on this tray', lineId);
        const contents = await this.mixReader.contents(transaction.read, studioId, [sessionId]);
        if (contents.some((content) => content.containerId === line.containerId)) {
          throw new Problem(
            409,
            'wrong-state',
            'This bottle is in a mix of this session, so it stays on the tray. Take the drops back first, if they were never mixed.',
          );
        }
        if (dto.outcome === 'opened unused') {
          const happenedAt = occurredAt(dto.occurredAt, transaction.recordedAt);
          const waste = { ...line, microlitres: 0 };
          await this.wastes.book(transaction, sessionId, [waste], dto.outcome, happenedAt);
          // Settled, not taken off: a serial number that was opened is never free again.
          await transaction.update(TrayLine, key, {
            state: 'settled',
            settledAs: dto.outcome,
            settledAt: happenedAt,
          });
        } else {
          await transaction.update(TrayLine, key, { state: 'taken off' });
        }
        return { id: line.id };
      },
    );
  }
}
