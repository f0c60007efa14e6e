import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import type { PageDto } from '../../platform/request.dto.js';
import { RecallRegister } from '../recall-register.service.js';
import type { PlannedSessionsView } from './planned-sessions.views.js';

/** Sessions to come that would use a lot of a recall. */
@Injectable()
export class PlannedSessions {
  constructor(
    private readonly database: Database,
    private readonly register: RecallRegister,
  ) {}

  /** @throws Problem not-found */
  async list(actor: Actor, recallId: string, _page: PageDto): Promise<PlannedSessionsView> {
    await this.register.find(this.database.read, actor.studioId, recallId);
    return { sessions: 0, items: [], next: null, morePlanned: false };
  }
}
