import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import { People } from '../../identity/people.service.js';
import { roleMay, roles } from '../../identity/permissions.js';
import type { Actor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { faultsProblem, notFound, refuseOtherVersion, staleVersion } from '../../platform/problem.js';
import { leavingDayFault } from './leaving-day.js';
import type { SetArtistPlanningDto } from './planning-settings.dto.js';
import { ArtistPlanning } from './planning-settings.entity.js';
import { artistPlannings } from './planning-settings.query.js';
import type { ArtistPlanningView } from './planning-settings.views.js';

/** Who may use a tray may need what is planned. */
export const treatingRoles = roles.filter((role) => roleMay(role, 'work the tray'));

/** Until when those who treat are here. */
@Injectable()
export class ArtistPlannings {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly people: People,
  ) {}

  list({ studioId }: Actor): Promise<ArtistPlanningView[]> {
    return artistPlannings(this.database.read, studioId, treatingRoles);
  }

  /** @throws Problem not-found; unusable-date; wrong-state; stale-version when somebody else set it since it was read */
  set(actor: Actor, personId: string, dto: SetArtistPlanningDto): Promise<ArtistPlanningView> {
    const { id, leavesOn = null, version } = dto;
    return this.transactions.write(
      actor,
      {
        id,
        action: 'reorder.set-artist-planning',
        subject: { kind: 'person', id: personId },
        content: { ...dto, personId },
      },
      async (transaction) => {
        // One at a time, so that two who set the first one do not meet in the key.
        await transaction.lockStudio();
        const { studioId, recordedAt: updatedAt } = transaction;
        await this.people.require(transaction, [personId], { atWork: true });
        const message =
          leavesOn === null ? null : leavingDayFault(leavesOn, localDay(updatedAt, actor.timeZone));
        if (message !== null) throw faultsProblem([{ field: 'leavesOn', message, code: 'unusable-date' }]);
        const key = { studioId, personId };
        const present = await transaction.manager.findOneBy(ArtistPlanning, key);
        refuseOtherVersion('planning of this person', present?.version ?? null, version);
        if (present === null) {
          await transaction.insert(ArtistPlanning, { ...key, leavesOn, version: 1, updatedAt });
        } else {
          const where = { ...key, version: present.version };
          const changes = { leavesOn, version: present.version + 1, updatedAt };
          if (!(await transaction.update(ArtistPlanning, where, changes))) {
            throw staleVersion('planning of this person', present.version);
          }
        }
        const all = await artistPlannings(transaction.read, studioId, roles);
        const view = all.find((one) => one.personId === personId);
        if (!view) throw notFound('person', personId);
        return view;
      },
    );
  }
}
