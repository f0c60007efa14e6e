import { Injectable } from '@nestjs/common';
import type { Read } from '../platform/database/database.js';

/** What is laid out of one container: on how many trays' lines, and how many pieces. */
export interface Reserved {
  lines: number;
  pieces: number;
}

export type ReservationReader = (read: Read, studioId: string, containerId: string) => Promise<Reserved>;

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
    const sum: Reserved = { lines: 0, pieces: 0 };
    for (const reader of this.readers) {
      const { lines, pieces } = await reader(read, studioId, containerId);
      sum.lines += lines;
      sum.pieces += pieces;
    }
    return sum;
  }
}
