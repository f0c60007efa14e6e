import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { Problem } from '../../platform/problem.js';
import { CalendarAddresses, type ReadStudio } from './calendar-addresses.service.js';
import { CalendarEntries } from './calendar-entries.service.js';
import { CalendarWriter } from './calendar-writer.service.js';
import { nearestEntries } from './nearest-entries.js';

/** So many calendars are remembered; programs ask for the same ones again and again. */
const mostRemembered = 100;
const fileName = /^([\w-]{43})\.ics$/;

export interface WrittenCalendar {
  text: string;
  /** A strong entity tag, RFC 9110, 8.8.3 [M]. */
  etag: string;
}

/**
 * What a calendar program reads. Guarantees: an address that never was, was removed, or whose person left is answered
 * alike; a calendar is put together again only when the record of the chain or the local day is another one, so that
 * asking often costs little.
 */
@Injectable()
export class CalendarFeed {
  private readonly remembered = new Map<string, { version: string; calendar: Promise<WrittenCalendar> }>();

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly addresses: CalendarAddresses,
    private readonly entries: CalendarEntries,
    private readonly writer: CalendarWriter,
  ) {}

  /**
   * @param file the secret and `.ics`
   * @throws Problem not-found
   */
  async read(file: string): Promise<WrittenCalendar> {
    const secret = fileName.exec(file)?.[1];
    const studio = secret === undefined ? undefined : await this.addresses.studioOf(secret);
    if (!studio) {
      throw new Problem(
        404,
        'not-found',
        'There is no calendar at this address. It was never made, or has ended: make a new one in the app, and give that to your calendar program.',
      );
    }
    const today = localDay(this.clock.now(), studio.timeZone);
    const version = `${today} ${await this.recordVersion(studio.chainId)}`;
    const known = this.remembered.get(studio.studioId);
    if (known?.version === version) return known.calendar;
    const calendar = this.write(studio, today);
    this.remember(studio.studioId, version, calendar);
    return calendar;
  }

  private async write(studio: ReadStudio, today: string): Promise<WrittenCalendar> {
    const entries = await this.entries.all(this.database.read, studio, today);
    const text = this.writer.write({ ...studio, today }, nearestEntries(entries, today));
    const digest = createHash('sha256').update(text, 'utf8').digest('base64url');
    return { text, etag: `"${digest}"` };
  }

  /** Every write of a studio moves the head of its audit log; products and suppliers are the chain's. */
  private async recordVersion(chainId: string): Promise<number> {
    const [head] = await this.database.read<{ entries: number }>(
      `SELECT sum(audit_head.sequence) AS entries FROM audit_head JOIN studio ON studio.id = audit_head.studio_id
       WHERE studio.chain_id = $1`,
      [chainId],
    );
    return head?.entries ?? 0;
  }

  private remember(studioId: string, version: string, calendar: Promise<WrittenCalendar>): void {
    this.remembered.delete(studioId);
    const [oldest] = this.remembered.keys();
    if (this.remembered.size >= mostRemembered && oldest !== undefined) this.remembered.delete(oldest);
    this.remembered.set(studioId, { version, calendar });
    // What failed is tried again.
    calendar.catch(() => {
      if (this.remembered.get(studioId)?.calendar === calendar) this.remembered.delete(studioId);
    });
  }
}
