import { Injectable } from '@nestjs/common';
import ICAL from 'ical.js';
import { Temporal } from 'temporal-polyfill';
import { Config } from '../../platform/config.js';
import { plainLine } from '../channels/plain-line.js';
import type { CalendarEntry, ChosenEntries } from './nearest-entries.js';

// The library counts a folded line without the blank it begins with, which RFC 5545, 3.1 counts too.
ICAL.foldLength = 74;

const longestTitle = 200;
const longestDetail = 300;
const mostDetails = 10;
const product = '-//Lotward//Lotward//EN';

/** A studio whose days are written down. */
export interface CalendarOwner {
  studioId: string;
  studioName: string;
  /** The studio's local day. */
  today: string;
}

/**
 * Writes entries as an iCalendar stream, RFC 5545: events of whole days, which leave the time free. The same entries
 * give the same text. What a person once typed stays one line.
 */
@Injectable()
export class CalendarWriter {
  constructor(private readonly config: Config) {}

  write({ studioId, studioName, today }: CalendarOwner, { entries, more }: ChosenEntries): string {
    const calendar = new ICAL.Component('vcalendar');
    const name = `Lotward – ${plainLine(studioName, longestTitle)}`;
    for (const [property, value] of [
      ['version', '2.0'],
      ['prodid', product],
      ['calscale', 'GREGORIAN'],
      // RFC 7986, 5.1, and what programs knew before it.
      ['name', name],
      ['x-wr-calname', name],
    ] as const) {
      calendar.addPropertyWithValue(property, value);
    }
    calendar.addPropertyWithValue('refresh-interval', ICAL.Duration.fromString('PT1H'));
    const last = more > 0 ? [leftOut(more, entries, today)] : [];
    for (const entry of [...entries, ...last]) calendar.addSubcomponent(this.event(studioId, entry));
    return `${calendar.toString()}\r\n`;
  }

  private event(studioId: string, entry: CalendarEntry): ICAL.Component {
    const event = new ICAL.Component('vevent');
    const day = (property: string, text: string) => {
      event.addPropertyWithValue(property, ICAL.Time.fromDateString(text));
    };
    const recordedAt = ICAL.Time.fromDateTimeString(`${entry.recordedAt.slice(0, 19)}Z`);
    // Of a calendar that is only read, the stamp is when the entry last became what it is: RFC 5545, 3.8.7.2.
    event.addPropertyWithValue('dtstamp', recordedAt);
    event.addPropertyWithValue('uid', `${entry.key.replaceAll(' ', '-')}@lotward`);
    event.addPropertyWithValue('sequence', entry.changes);
    day('dtstart', entry.firstDay);
    // The end of whole days is the first day that no longer belongs to them: RFC 5545, 3.6.1.
    day('dtend', Temporal.PlainDate.from(entry.lastDay).add({ days: 1 }).toString());
    event.addPropertyWithValue('summary', plainLine(entry.title, longestTitle));
    const url = `${this.config.publicUrl}/studios/${studioId}${entry.page}`;
    const details = entry.details.slice(0, mostDetails).map((line) => plainLine(line, longestDetail));
    event.addPropertyWithValue('description', [...details, url].join('\n'));
    event.addPropertyWithValue('url', url);
    event.addPropertyWithValue('transp', 'TRANSPARENT');
    return event;
  }
}

/** Says on the last day that is shown that the calendar ends there although the record goes on. */
function leftOut(more: number, entries: readonly CalendarEntry[], today: string): CalendarEntry {
  const [day = today] = [today, ...entries.map(({ firstDay }) => firstDay)].sort().reverse();
  return {
    key: 'left out',
    firstDay: day,
    lastDay: day,
    title: `${more} more in Lotward`,
    details: [`This calendar shows the nearest ${entries.length}; ${more} later ones are left out.`],
    page: '/today',
    recordedAt: `${day}T00:00:00Z`,
    changes: 0,
  };
}
