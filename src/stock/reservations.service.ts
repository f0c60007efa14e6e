import { Injectable } from '@nestjs/common';
import type { Read } from '../platform/database/database.js';

/** What is laid out of one container: on how many trays' lines, and how many pieces. */
export interface Reserved {
  lines: number;
  pieces: number;
}

/** By container id; a container of which nothing is laid out may be left out. */
export type ReservationReader = (
  read: Read,
  studioId: string,
  containerIds: readonly string[],
) => Promise<({ containerId: string } & Reserved)[]>;

/** A statement takes so many parameters on either engine. */
const containersAskedAtOnce = 1_000;

/**
 * What of stock is laid out for somebody. Rooms to the right register here at start-up (onModuleInit) how they know, so
 * that stock does not take away what lies on a tray and need not know trays.
 */
@Injectable()
export class Reservations {
  private readonly readers: ReservationReader[] = [];

  register(reader: ReservationReader): void {
    this.readers.push(reader);
  }

  /** Of a container whose product is locked, so that nothing is laid out meanwhile. */
  async of(read: Read, studioId: string, containerId: string): Promise<Reserved> {
    const reserved = await this.ofAll(read, studioId, [containerId]);
    return reserved.get(containerId) ?? { lines: 0, pieces: 0 };
  }

  /** The same for containers named by their ids; each has an entry. */
  async ofAll(read: Read, studioId: string, containerIds: readonly string[]): Promise<Map<string, Reserved>> {
    const sums = new Map(containerIds.map((id): [string, Reserved] => [id, { lines: 0, pieces: 0 }]));
    const asked = [...sums.keys()];
    for (let from = 0; from < asked.length; from += containersAskedAtOnce) {
      const some = asked.slice(from, from + containersAskedAtOnce);
      for (const reader of this.readers) {
        for (const { containerId, lines, pieces } of await reader(read, studioId, some)) {
          const sum = sums.get(containerId);
          if (!sum) continue;
          sum.lines += lines;
          sum.pieces += pieces;
        }
      }
    }
    return sums;
  }
}
