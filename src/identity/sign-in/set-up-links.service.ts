import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { systemActor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import { type MadeLink, OneTimeLinks } from './one-time-links.service.js';

/** Makes the link by which the first owner comes in. */
@Injectable()
export class SetUpLinks {
  constructor(
    private readonly database: Database,
    private readonly links: OneTimeLinks,
  ) {}

  /** A fresh link, while nobody has an account; undefined afterwards. Links of before work no more. */
  async make(): Promise<MadeLink | undefined> {
    const [owner] = await this.database.read<{
      id: string;
      chainId: string;
      timeZone: string;
      ownerId: string;
    }>(
      `SELECT studio.id, studio.chain_id AS "chainId", studio.time_zone AS "timeZone", person.id AS "ownerId"
       FROM person JOIN studio ON studio.id = person.studio_id
       WHERE person.role = 'owner' AND person.state = 'active' AND NOT EXISTS (SELECT 1 FROM account)
       ORDER BY studio.created_at, person.created_at, person.id LIMIT 1`,
    );
    return owner && this.links.make(systemActor(owner), owner.ownerId, 'set-up', uuidv7());
  }
}
