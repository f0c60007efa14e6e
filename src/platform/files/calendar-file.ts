import ICAL from 'ical.js';
import { Temporal } from 'temporal-polyfill';
import type { FileFaultView } from './file-faults.views.js';

/** More entries, once those that repeat are written out, are not taken in at a time. */
export const maximumCalendarEntries = 1_000;
/** An entry that repeats oftener is refused: nobody is booked so often ahead. */
export const maximumRepetitions = 60;

/** One time of an entry of a calendar, with the texts it has. */
export interface CalendarEntry {
  /** Which entry of the file, from 1; all times of one that repeats have the same. */
  number: number;
  /** By what it is known again when the calendar is brought again: its UID and, where it repeats, which time it is. */
  key: string | null;
  /** Instant in UTC with milliseconds; null when that is at fault. */
  start: string | null;
  summary: string;
  description: string;
  /** Who was invited, without the organizer, rooms and resources. */
  attendees: { name: string | null; address: string | null }[];
  /** Instant at which the entry was made; null when it does not say. */
  createdAt: string | null;
  cancelled: boolean;
  faults: string[];
  /** What was taken for granted about its time. */
  remarks: string[];
}

export interface Calendar {
  entries: CalendarEntry[];
  /** Why the file as a whole cannot be read. */
  faults: FileFaultView[];
}

/** Whether a text is an iCalendar and not a table. */
export function isCalendar(text: string): boolean {
  return /^\uFEFF?\s*BEGIN:VCALENDAR\b/i.test(text);
}

/**
 * Reads the events of an iCalendar (RFC 5545). A start in UTC, in a named time zone or in one that the file defines is an
 * instant; one without a zone is by the studio's clocks; a day without a time is a fault. What the clocks skip or show
 * twice is read as RFC 5545, 3.3.5 says. Entries that repeat are written out when they end, without the times that are
 * taken out (EXDATE) or replaced (RECURRENCE-ID).
 *
 * @param timeZone of the studio, IANA
 */
export function readCalendar(text: string, timeZone: string): Calendar {
  const whole = (message: string): Calendar => ({
    entries: [],
    faults: [{ row: null, column: null, message }],
  });
  let events: ICAL.Component[];
  try {
    events = componentsOf(text).flatMap((calendar) => calendar.getAllSubcomponents('vevent'));
  } catch {
    return whole('The file begins as an iCalendar but cannot be read as one (RFC 5545). Export it anew.');
  }
  if (events.length === 0) return whole('The calendar has no entries. Add what is to be taken in.');
  const replaced = replacedTimes(events, timeZone);
  const entries: CalendarEntry[] = [];
  for (const [index, event] of events.entries()) {
    entries.push(...entriesOf(event, index + 1, timeZone, replaced));
    if (entries.length > maximumCalendarEntries) {
      return whole(
        `The calendar has more than ${maximumCalendarEntries} entries; at most so many are taken in at a time. Export a shorter time.`,
      );
    }
  }
  return { entries, faults: [] };
}

function componentsOf(text: string): ICAL.Component[] {
  const parsed = ICAL.parse(text.replace(/^\uFEFF/, '').trim()) as unknown[];
  const calendars = typeof parsed[0] === 'string' ? [parsed] : (parsed as unknown[][]);
  return calendars.map((calendar) => new ICAL.Component(calendar));
}

/** Times of entries that repeat for which another entry stands, by UID. */
function replacedTimes(events: readonly ICAL.Component[], timeZone: string): Map<string, Set<string>> {
  const replaced = new Map<string, Set<string>>();
  for (const event of events) {
    const property = event.getFirstProperty('recurrence-id');
    const uid = textOf(event, 'uid');
    const [moment] = property === null || uid === '' ? [] : momentsOf(property, timeZone);
    if (moment === undefined || 'fault' in moment) continue;
    replaced.set(uid, (replaced.get(uid) ?? new Set()).add(moment.instant));
  }
  return replaced;
}

type Moment = { instant: string; remark: string | null } | { fault: string };

function entriesOf(
  event: ICAL.Component,
  number: number,
  timeZone: string,
  replaced: ReadonlyMap<string, ReadonlySet<string>>,
): CalendarEntry[] {
  const uid = textOf(event, 'uid');
  const entry = (
    start: string | null,
    key: string | null,
    more: Partial<CalendarEntry> = {},
  ): CalendarEntry => ({
    number,
    key,
    start,
    summary: textOf(event, 'summary'),
    description: textOf(event, 'description'),
    attendees: attendeesOf(event),
    createdAt: createdAtOf(event),
    cancelled: textOf(event, 'status').toUpperCase() === 'CANCELLED',
    faults: [],
    remarks: [],
    ...more,
  });
  const key = (...parts: string[]) => (uid === '' ? null : [uid, ...parts].join('\n'));
  const faulty = (message: string) => [entry(null, key(), { faults: [message] })];

  const property = event.getFirstProperty('dtstart');
  if (property === null) return faulty('has no start (DTSTART)');
  const [start] = momentsOf(property, timeZone);
  if (start === undefined || 'fault' in start)
    return faulty(start?.fault ?? 'has a start that cannot be read');
  const remarks = start.remark === null ? [] : [start.remark];

  const instance = event.getFirstProperty('recurrence-id');
  if (instance !== null) {
    const [moment] = momentsOf(instance, timeZone);
    if (moment === undefined || 'fault' in moment)
      return faulty('replaces a time that cannot be read (RECURRENCE-ID)');
    if (instance.getParameter('range') !== undefined) {
      return faulty(
        'changes all later times of an entry that repeats (RANGE); write them as entries of their own',
      );
    }
    return [entry(start.instant, key(moment.instant), { remarks })];
  }
  if (!event.hasProperty('rrule') && !event.hasProperty('rdate'))
    return [entry(start.instant, key(), { remarks })];

  const times = repetitions(event, property, timeZone);
  if ('fault' in times) return faulty(times.fault);
  return times
    .filter((moment) => !replaced.get(uid)?.has(moment.instant))
    .map((moment) =>
      entry(moment.instant, key(moment.instant), { remarks: moment.remark === null ? [] : [moment.remark] }),
    );
}

type Sound = Extract<Moment, { instant: string }>;

/** Parts of a rule that are read, by how often it repeats. Others may never meet a day, and looking for it never end. */
const partsRead: Record<string, readonly string[]> = {
  DAILY: [],
  WEEKLY: ['BYDAY'],
  MONTHLY: ['BYDAY', 'BYMONTHDAY'],
  YEARLY: [],
};
const allowedRules =
  'every so many days, weeks (on days of the week), months (on days of the week or of the month) or years are read';

/** All times of an entry that repeats, in their order. */
function repetitions(
  event: ICAL.Component,
  start: ICAL.Property,
  timeZone: string,
): Sound[] | { fault: string } {
  for (const property of event.getAllProperties('rrule')) {
    const rule = property.getFirstValue() as ICAL.Recur | null;
    const parts = Object.keys(rule?.parts ?? {}).filter((part) => part.startsWith('BY'));
    const read = partsRead[String(rule?.freq ?? '')];
    if (
      rule === null ||
      read === undefined ||
      parts.length > 1 ||
      !parts.every((part) => read.includes(part))
    ) {
      return { fault: `repeats by a rule that is not read; ${allowedRules}` };
    }
    // Every twelfth month is always the same one, which may have no thirtieth day or fifth Monday.
    if (rule.freq === 'MONTHLY' && parts.length > 0 && Number(rule.interval) >= 12) {
      return { fault: `repeats by a rule that is not read; ${allowedRules}` };
    }
    if (!rule.count && !rule.until) {
      return { fault: 'repeats without an end; give it one in the calendar, or export a shorter time' };
    }
    if (rule.until && !rule.until.isDate) rule.until = untilByClock(rule.until, start, timeZone);
  }
  const moments: Moment[] = [];
  const taken = event.getAllProperties('exdate').flatMap((property) => momentsOf(property, timeZone));
  const added = event.getAllProperties('rdate').flatMap((property) => momentsOf(property, timeZone));
  const bad = [...taken, ...added].find((moment) => 'fault' in moment);
  if (bad !== undefined && 'fault' in bad)
    return { fault: `lists a time (EXDATE or RDATE) that ${bad.fault}` };
  try {
    const series = new ICAL.Component(['vevent', [], []]);
    for (const property of event.getAllProperties('rrule')) series.addProperty(property);
    const first = (start.getFirstValue() as ICAL.Time).clone();
    const expansion = new ICAL.RecurExpansion({ component: series, dtstart: first });
    for (;;) {
      const time = expansion.next() as ICAL.Time | null | undefined;
      if (!time) break;
      moments.push(momentOf(time, zoneOf(start), timeZone));
      if (moments.length > maximumRepetitions) {
        return { fault: `repeats more than ${maximumRepetitions} times; export a shorter time` };
      }
    }
  } catch {
    return { fault: `repeats by a rule that cannot be read; ${allowedRules}` };
  }
  const left = new Map<string, Sound>();
  for (const moment of [...moments, ...added]) {
    if ('fault' in moment) return moment;
    left.set(moment.instant, moment);
  }
  for (const moment of taken) if ('instant' in moment) left.delete(moment.instant);
  const sorted = [...left.values()].sort((one, other) => (one.instant < other.instant ? -1 : 1));
  return sorted.length > maximumRepetitions
    ? { fault: `repeats more than ${maximumRepetitions} times; export a shorter time` }
    : sorted;
}

/** The end of a repetition, which is written in UTC, by the clock in which its times are counted. */
function untilByClock(until: ICAL.Time, start: ICAL.Property, timeZone: string): ICAL.Time {
  const first = start.getFirstValue() as ICAL.Time;
  const isUtc = (time: ICAL.Time) => time.zone === ICAL.Timezone.utcTimezone;
  // One whose zone the file defines, or which is UTC itself, is compared as an instant.
  if (!isUtc(until) || first.zone !== ICAL.Timezone.localTimezone) return until;
  const local = Temporal.Instant.fromEpochMilliseconds(until.toUnixTime() * 1_000)
    .toZonedDateTimeISO(knownZone(zoneOf(start)) ?? timeZone)
    .toPlainDateTime();
  const { year, month, day, hour, minute, second } = local;
  return ICAL.Time.fromData({ year, month, day, hour, minute, second, isDate: false });
}

/** The instants that a property names. */
function momentsOf(property: ICAL.Property, timeZone: string): Moment[] {
  return property
    .getValues()
    .map((value: unknown) =>
      value instanceof ICAL.Time
        ? momentOf(value, zoneOf(property), timeZone)
        : { fault: 'is not a point in time' },
    );
}

function zoneOf(property: ICAL.Property): string | null {
  const zone: unknown = property.getParameter('tzid');
  return typeof zone === 'string' ? zone : null;
}

/** The IANA zone of a name, which may have a slash before it; null when there is none of it. */
function knownZone(name: string | null): string | null {
  if (name === null) return null;
  const zone = name.replace(/^\//, '');
  try {
    return Temporal.Now.zonedDateTimeISO(zone).timeZoneId;
  } catch {
    return null;
  }
}

function momentOf(time: ICAL.Time, zone: string | null, timeZone: string): Moment {
  if (time.isDate)
    return { fault: `is a day without a time, ${time.toString()}; give it one in the calendar` };
  if (time.zone === ICAL.Timezone.utcTimezone && zone === null) {
    return {
      instant: canonical(Temporal.Instant.fromEpochMilliseconds(time.toUnixTime() * 1_000)),
      remark: null,
    };
  }
  const known = knownZone(zone);
  if (zone !== null && known === null) {
    if (time.zone?.tzid !== zone) {
      return {
        fault: `is in the time zone "${zone.slice(0, 40)}", which is not known and not defined in the file`,
      };
    }
    return {
      instant: canonical(Temporal.Instant.fromEpochMilliseconds(time.toUnixTime() * 1_000)),
      remark: null,
    };
  }
  const { year, month, day, hour, minute, second } = time;
  let local: Temporal.PlainDateTime;
  try {
    local = Temporal.PlainDateTime.from({ year, month, day, hour, minute, second }, { overflow: 'reject' });
  } catch {
    return { fault: 'is no time of the calendar' };
  }
  const inZone = known ?? timeZone;
  // RFC 5545, 3.3.5: the first of two; what is skipped by the offset before it, which is "compatible".
  const zoned = local.toZonedDateTime(inZone, { disambiguation: 'compatible' });
  const shown = zoned.toPlainDateTime();
  const later = local.toZonedDateTime(inZone, { disambiguation: 'later' });
  const remark = !shown.equals(local)
    ? `${told(local)} is skipped by the clocks of ${inZone}; taken as ${told(shown)}`
    : later.epochMilliseconds !== zoned.epochMilliseconds
      ? `${told(local)} comes twice by the clocks of ${inZone}; the first was taken`
      : null;
  return { instant: canonical(zoned.toInstant()), remark };
}

function told(time: Temporal.PlainDateTime): string {
  return `${time.toPlainDate()} ${time.toPlainTime().toString({ smallestUnit: 'minute' })}`;
}

function canonical(instant: Temporal.Instant): string {
  return instant.toString({ fractionalSecondDigits: 3 });
}

function textOf(event: ICAL.Component, name: string): string {
  const value: unknown = event.getFirstPropertyValue(name);
  return typeof value === 'string' ? value.trim() : '';
}

function createdAtOf(event: ICAL.Component): string | null {
  const property = event.getFirstProperty('created');
  const [moment] = property === null ? [] : momentsOf(property, 'UTC');
  return moment !== undefined && 'instant' in moment ? moment.instant : null;
}

function attendeesOf(event: ICAL.Component): CalendarEntry['attendees'] {
  const organizer = addressOf(event.getFirstPropertyValue('organizer'));
  return event.getAllProperties('attendee').flatMap((property) => {
    const kind = String(property.getParameter('cutype') ?? '').toUpperCase();
    const address = addressOf(property.getFirstValue());
    if (kind === 'ROOM' || kind === 'RESOURCE' || (address !== null && address === organizer)) return [];
    const name: unknown = property.getParameter('cn');
    return [{ name: typeof name === 'string' && name.trim() !== '' ? name.trim() : null, address }];
  });
}

function addressOf(value: unknown): string | null {
  const address = typeof value === 'string' ? value.replace(/^(mailto|tel):/i, '').trim() : '';
  return address === '' ? null : address;
}
