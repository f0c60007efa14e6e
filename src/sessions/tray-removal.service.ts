import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Transactions } from '../platform/database/transactions.js';
import { notFound, Problem } from '../platform/problem.js';
import { requireSetup } from './require-setup.service.js';
import type { TakeOffDto } from './tray.dto.js';
import type { TakenOffView } from './tray.views.js';
import { TrayLine } from './tray-line.entity.js';
import { TrayLookUp } from './tray-look-up.service.js';

/** Takes things off a tray again. */
@Injectable()
export class TrayRemoval {
  constructor(
    private readonly transactions: Transactions,
    private readonly lookUp: TrayLookUp,
  ) {}

  /** Takes a line off the tray again, unopened: its piece is free for others. */
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
        await transaction.lock('session', [sessionId]);
        const { state } = await this.lookUp.session(transaction.read, actor.studioId, sessionId);
        requireSetup(state);
        const [mixed] = await transaction.query<{ microlitres: number | null }>(
          `SELECT sum(mix_component.microlitres) AS microlitres FROM mix_component JOIN tray_line
             ON tray_line.studio_id = mix_component.studio_id AND tray_line.session_id = mix_component.session_id
               AND tray_line.container_id = mix_component.container_id
           WHERE tray_line.studio_id = $1 AND tray_line.session_id = $2 AND tray_line.id = $3`,
          [actor.studioId, sessionId, lineId],
        );
        if ((mixed?.microlitres ?? 0) !== 0) {
          throw new Problem(
            409,
            'wrong-state',
            'This bottle is in a mix of this session, so it stays on the tray. Take the drops back first, if they were never mixed.',
          );
        }
        const line = await transaction.update(
          TrayLine,
          { studioId: actor.studioId, sessionId, id: lineId, state: 'on tray' },
          { state: 'taken off' },
        );
        if (!line) throw notFound('line on this tray', lineId);
        return { id: line.id };
      },
    );
  }
}
