import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import type { Read } from '../../platform/database/database.js';
import { ToldPeople, type ToldPerson } from '../preferences/told-people.service.js';
import { latestTrueDay, type SummaryWish } from './summary-due.js';

/** Somebody who may be told in the morning. */
export interface SummaryReader extends ToldPerson {
  /** Null: they want none, or there is nowhere to send it to. */
  wish: SummaryWish | null;
}

interface ReachedRow {
  personId: string;
  reachedSince: string;
  chosenAt: string | null;
  lastDay: string | null;
}

/** Who is told in the morning, and when: whoever wants it and has a mail address or a browser that works. */
@Injectable()
export class SummaryReaders {
  constructor(private readonly toldPeople: ToldPeople) {}

  /** Ids of the studios in which anybody can be told. */
  async studios(read: Read): Promise<Set<string>> {
    const rows = await read<{ id: string }>(
      `SELECT id FROM studio WHERE EXISTS (
         SELECT 1 FROM alert_destination AS destination
         WHERE destination.studio_id = studio.id AND destination.person_id IS NOT NULL AND destination.state = 'active')`,
    );
    return new Set(rows.map(({ id }) => id));
  }

  /**
   * Everybody who may see the alerts of the studio.
   * @param now ISO 8601 instant
   */
  async of(
    read: Read,
    { studioId, timeZone }: Pick<Actor, 'studioId' | 'timeZone'>,
    now: string,
  ): Promise<SummaryReader[]> {
    const people = await this.toldPeople.of(read, studioId, localDay(now, timeZone), []);
    const reached = new Map(
      (await this.reached(read, studioId, latestTrueDay(now, timeZone))).map((row) => [row.personId, row]),
    );
    const [studio] = await read<{ morning: string }>('SELECT morning FROM studio WHERE id = $1', [studioId]);
    return people.map((person) => {
      const { preference, destinations, personId } = person;
      const row = reached.get(personId);
      if (preference.summary !== 'daily' || destinations.length === 0 || !row || !studio) {
        return { ...person, wish: null };
      }
      const { reachedSince, chosenAt, lastDay } = row;
      const since = chosenAt !== null && chosenAt > reachedSince ? chosenAt : reachedSince;
      return { ...person, wish: { at: preference.summaryAt ?? studio.morning, since, lastDay } };
    });
  }

  private reached(read: Read, studioId: string, throughDay: string): Promise<ReachedRow[]> {
    return read<ReachedRow>(
      `SELECT destination.person_id AS "personId", min(destination.created_at) AS "reachedSince",
         (SELECT updated_at FROM alert_preference
          WHERE studio_id = $1 AND person_id = destination.person_id) AS "chosenAt",
         (SELECT max(day) FROM morning_summary
          WHERE studio_id = $1 AND person_id = destination.person_id AND day <= $2) AS "lastDay"
       FROM alert_destination AS destination
       WHERE destination.studio_id = $1 AND destination.person_id IS NOT NULL AND destination.state = 'active'
       GROUP BY destination.person_id`,
      [studioId, throughDay],
    );
  }
}
