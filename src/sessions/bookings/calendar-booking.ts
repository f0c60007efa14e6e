import { foldedName } from '../../stock/opening-stock/folded-name.js';
import { visitKinds } from '../vocabulary.js';
import type { BookingCells, BookingColumn } from './booking-columns.js';

/** The texts of an entry of a calendar. */
export interface CalendarTexts {
  summary: string;
  description: string;
  /** Who was invited, without the organizer and rooms. */
  attendees: readonly { name: string | null; address: string | null }[];
}

export interface KnownWords {
  procedures: readonly string[];
  /** Who works here, by name. */
  people: readonly string[];
}

/** What a line of the description may begin with, before a colon. */
const linesRead: Record<string, BookingColumn> = {
  client: 'client name',
  reference: 'client reference',
  contact: 'contact',
  artist: 'artist',
  procedure: 'procedure',
  visit: 'visit',
  booked: 'booked at',
};
const line = /^\s*(\p{L}+)\s*:\s*(.*\S)\s*$/u;
const betweenParts = /\s+[-–—]\s+/;
const reference = /^[0-9A-Z]{4}-[0-9A-Z]{2}$/i;

/**
 * What an entry of a calendar says of a booking, in the words of the columns of a list.
 *
 * - Lines of the description such as `Contact: +43 1 5550100` say what they say: client, reference, contact, artist,
 *   procedure, visit, booked.
 * - One person who was invited is the client, by name and address.
 * - The summary is read in parts between dashes, `Ida Sommer – Powdered brows – touch-up`: a part that names a procedure,
 *   a kind of visit or somebody who works here is that; what remains is the client, by name or reference.
 *
 * What stands first in this list counts.
 */
export function bookingOfCalendar(
  { summary, description, attendees }: CalendarTexts,
  known: KnownWords,
): { cells: BookingCells; fault: string | null } {
  const cells: BookingCells = {};
  const say = (column: BookingColumn, text: string | null) => {
    if (text !== null && text !== '') cells[column] ??= text;
  };
  for (const each of description.split(/\r\n|\r|\n/)) {
    const [, word = '', text = ''] = line.exec(each) ?? [];
    const column = linesRead[word.toLowerCase()];
    if (column !== undefined) say(column, text);
  }
  const named = () => cells['client name'] !== undefined || cells['client reference'] !== undefined;
  const people = attendees.filter(({ name }) => !isOneOf(known.people, name));
  const [attendee] = people;
  if (people.length === 1 && attendee && !named()) {
    // Many programs put the address in place of a name.
    if (attendee.name !== null && attendee.name !== attendee.address) say('client name', attendee.name);
    if (named()) say('contact', attendee.address);
  }
  const others: string[] = [];
  for (const part of summary.split(betweenParts).map((each) => each.trim())) {
    if (part === '') continue;
    if (isOneOf(known.procedures, part)) say('procedure', part);
    else if (isOneOf(visitKinds, part)) say('visit', part);
    else if (isOneOf(known.people, part)) say('artist', part);
    else others.push(part);
  }
  if (named()) return { cells, fault: null };
  const [client, ...further] = others;
  if (client === undefined) return { cells, fault: null };
  if (further.length > 0) {
    return {
      cells,
      fault: `has parts of which it is not clear who the client is: ${others.map((part) => `"${part.slice(0, 40)}"`).join(', ')}; write a line "Client: …" into its description`,
    };
  }
  if (reference.test(client)) say('client reference', client);
  else {
    say('client name', client);
    if (people.length === 1) say('contact', attendee?.address ?? null);
  }
  return { cells, fault: null };
}

function isOneOf(words: readonly string[], text: string | null): boolean {
  return text !== null && words.some((word) => foldedName(word) === foldedName(text));
}
