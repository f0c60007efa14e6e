import { Injectable } from '@nestjs/common';
import { type Role, roleMay } from '../../identity/permissions.js';
import type { Read } from '../../platform/database/database.js';
import { defaultPreference, type HowToTell } from './default-preference.js';

const mostPeople = 500;

/** Somebody who works in the studio, with how they are told and what leads to them. */
export interface ToldPerson {
  personId: string;
  role: Role;
  preference: HowToTell;
  /** Null: they chose nothing, and the preference is assumed. */
  version: number | null;
  /** Active ones. */
  destinations: { id: string; kind: 'mail' | 'push' }[];
}

type PersonRow = Omit<HowToTell, 'toldFrom' | 'kindsLeftOut'> & {
  personId: string;
  role: Role;
  toldFrom: HowToTell['toldFrom'] | null;
  kindsLeftOut: string | null;
  version: number | null;
};

/** Who works in a studio and may see its alerts, and how each of them is told. */
@Injectable()
export class ToldPeople {
  /**
   * In the order in which they came.
   * @param day the studio's local day; whose last day is over works there no more
   * @param inOrder ids of the people the studio put into its order
   */
  async of(read: Read, studioId: string, day: string, inOrder: readonly string[]): Promise<ToldPerson[]> {
    const rows = await read<PersonRow>(
      `SELECT person.id AS "personId", person.role, preference.told_from AS "toldFrom",
         preference.urgent_turn AS "urgentTurn", preference.summary, preference.summary_at AS "summaryAt",
         preference.quiet_from AS "quietFrom", preference.quiet_until AS "quietUntil",
         preference.kinds_left_out AS "kindsLeftOut", preference.version
       FROM person LEFT JOIN alert_preference AS preference
         ON preference.studio_id = person.studio_id AND preference.person_id = person.id
       WHERE person.studio_id = $1 AND person.state = 'active' AND (person.until IS NULL OR person.until >= $2)
       ORDER BY person.created_at, person.id LIMIT ${mostPeople}`,
      [studioId, day],
    );
    const destinations = await this.destinations(read, studioId);
    const named = new Set(inOrder);
    return rows
      .filter(({ role }) => roleMay(role, 'see alerts'))
      .map(({ personId, role, version, toldFrom, kindsLeftOut, ...chosen }) => ({
        personId,
        role,
        version,
        preference:
          toldFrom === null || kindsLeftOut === null
            ? defaultPreference(role, named.has(personId))
            : { ...chosen, toldFrom, kindsLeftOut: JSON.parse(kindsLeftOut) as string[] },
        destinations: destinations.get(personId) ?? [],
      }));
  }

  private async destinations(read: Read, studioId: string): Promise<Map<string, ToldPerson['destinations']>> {
    const rows = await read<{ id: string; kind: 'mail' | 'push'; personId: string }>(
      `SELECT id, kind, person_id AS "personId" FROM alert_destination
       WHERE studio_id = $1 AND person_id IS NOT NULL AND state = 'active' ORDER BY created_at, id`,
      [studioId],
    );
    const found = new Map<string, ToldPerson['destinations']>();
    for (const { personId, id, kind } of rows) {
      found.set(personId, [...(found.get(personId) ?? []), { id, kind }]);
    }
    return found;
  }
}
