import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import { type Role, roleMay } from '../../identity/permissions.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { Problem } from '../../platform/problem.js';

interface LedStudio {
  studioId: string;
  name: string;
  timeZone: string;
  /** Null: the account is no active person there. */
  role: Role | null;
  until: string | null;
}

/** Who may act for a whole chain: whoever leads every studio of it, by a row that a head of each studio made. */
@Injectable()
export class ChainHeads {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /**
   * @returns the studios of the chain, the oldest first
   * @throws Problem not-allowed naming the studios that the person does not lead
   */
  async require(actor: Actor): Promise<{ studioId: string; name: string }[]> {
    const studios = await this.database.read<LedStudio>(
      `SELECT studio.id AS "studioId", studio.name, studio.time_zone AS "timeZone", leader.role, leader.until
       FROM studio LEFT JOIN person AS leader
         ON leader.studio_id = studio.id AND leader.state = 'active' AND leader.account_id = (
           SELECT account_id FROM person WHERE person.studio_id = $2 AND person.id = $3)
         OR leader.studio_id = studio.id AND leader.studio_id = $2 AND leader.id = $3 AND leader.state = 'active'
       WHERE studio.chain_id = $1 ORDER BY studio.created_at, studio.id`,
      [actor.chainId, actor.studioId, actor.personId],
    );
    const now = this.clock.now();
    const others = studios.filter(
      ({ role, until, timeZone }) =>
        role === null ||
        !roleMay(role, 'answer recalls of the chain') ||
        (until !== null && localDay(now, timeZone) > until),
    );
    if (others.length > 0) {
      throw new Problem(
        403,
        'not-allowed',
        `This is for whoever leads every studio of the chain, as owner or chain manager. You do not lead ${others
          .map(({ name }) => name)
          .join(', ')}. Ask somebody who does, or answer the recall for your own studio.`,
      );
    }
    return studios.map(({ studioId, name }) => ({ studioId, name }));
  }
}
