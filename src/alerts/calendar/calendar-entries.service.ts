import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import type { Actor } from '../../platform/actor.js';
import type { Read } from '../../platform/database/database.js';
import type { CalendarEntry } from './nearest-entries.js';

/** What ended longer ago stands in no calendar. */
const daysBack = 31;

/** What a calendar is asked for. */
export interface CalendarQuestion extends Pick<Actor, 'studioId' | 'chainId' | 'timeZone'> {
  /** The first local day that matters, ISO `YYYY-MM-DD`: what ends before is left out. */
  from: string;
}

/** What one room has to say of days. */
export interface CalendarSource {
  /** The room's name, or of its part. */
  name: string;
  /** All of it; never a client. */
  entries(read: Read, question: CalendarQuestion): Promise<CalendarEntry[]>;
}

/** Rooms to the right register here at start-up (onModuleInit), so that calendars know them and they need not know those. */
@Injectable()
export class CalendarEntries {
  private readonly sources: CalendarSource[] = [];

  register(source: CalendarSource): void {
    this.sources.push(source);
  }

  /** @param today the studio's local day */
  async all(
    read: Read,
    studio: Pick<Actor, 'studioId' | 'chainId' | 'timeZone'>,
    today: string,
  ): Promise<CalendarEntry[]> {
    const from = Temporal.PlainDate.from(today).subtract({ days: daysBack }).toString();
    const entries: CalendarEntry[] = [];
    for (const source of this.sources) {
      for (const entry of await source.entries(read, { ...studio, from })) {
        if (entry.lastDay >= from) entries.push(entry);
      }
    }
    return entries;
  }
}
