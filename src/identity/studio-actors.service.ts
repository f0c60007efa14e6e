import { Injectable } from '@nestjs/common';
import { type Actor, systemActor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';

interface StudioRow {
  id: string;
  chainId: string;
  timeZone: string;
}

const actingStudios = 'SELECT id, chain_id AS "chainId", time_zone AS "timeZone" FROM studio';

/** The service itself, acting in the studios on record: who writes what no person asked for. */
@Injectable()
export class StudioActors {
  constructor(private readonly database: Database) {}

  /** One for every studio, the oldest studio first. */
  async all(): Promise<Actor[]> {
    const studios = await this.database.read<StudioRow>(`${actingStudios} ORDER BY created_at, id`);
    return studios.map(systemActor);
  }

  /** Undefined when there is no such studio. */
  async of(studioId: string): Promise<Actor | undefined> {
    const [studio] = await this.database.read<StudioRow>(`${actingStudios} WHERE id = $1`, [studioId]);
    return studio && systemActor(studio);
  }
}
