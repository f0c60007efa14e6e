import { orderOfPeople, type PersonInOrder } from '../handing-on/order-of-people.js';
import { type AlertSeverity, severities } from '../open-condition.js';
import type { HowToTell } from '../preferences/default-preference.js';
import { endOfQuietHours } from '../preferences/quiet-hours.js';

/** Steps of an alert that are told. */
export type ToldEvent = 'opened' | 'worse' | 'due again' | 'handed on' | 'given' | 'closed';

export interface PersonToTell extends PersonInOrder {
  preference: HowToTell;
  /** What leads to them and works. */
  destinations: readonly { id: string }[];
}

/** Whom a studio's alerts may reach. */
export interface Audience {
  /** Those that work. */
  webhooks: readonly { id: string; minimumSeverity: AlertSeverity }[];
  /** Those who work in the studio just now, in the order in which they came. */
  people: readonly PersonToTell[];
  /** Ids of people whom the studio put in order; empty: managers, then owners. */
  personIds: readonly string[];
  /** IANA time zone of the studio. */
  timeZone: string;
}

export interface Occasion {
  event: ToldEvent;
  kind: string;
  severity: AlertSeverity;
  /** Whoever sees to the alert, or null. */
  givenTo: string | null;
  /** Whoever gave it: they know. Null: nobody in person. */
  personId: string | null;
  /** Of what is given or handed on: to whom. Handed on to null: to everybody. */
  toPersonId: string | null;
  /** Of what is closed: destinations that were told of it. */
  toldBefore: readonly string[];
  /** ISO 8601 instant. */
  at: string;
}

export interface Told {
  destinationId: string;
  /** ISO 8601 instant, the end of quiet hours; null: at once. */
  notBefore: string | null;
}

/**
 * Who is told of a step of an alert, beside the log.
 *
 * A webhook is told of what is as severe as it asks for, and that an alert is closed when it was told of that alert.
 *
 * A person is told one by one of what is as severe as they chose and of no kind they left out, when their quiet hours are
 * over. What is urgent knows neither: those are told at once who want it so and whose turn it is first. Handed on, it
 * reaches the one whose turn it is, and at the end of the order everybody who is told of what is urgent. What is given
 * to somebody reaches them whatever they chose. That an alert is closed is told to no person: it is gone from the list.
 *
 * @returns each destination once
 */
export function whoIsTold(occasion: Occasion, audience: Audience): Told[] {
  const webhooks = audience.webhooks.filter(({ id, minimumSeverity }) =>
    occasion.event === 'closed'
      ? occasion.toldBefore.includes(id)
      : isAsSevere(occasion.severity, minimumSeverity),
  );
  return [
    ...webhooks.map(({ id }) => ({ destinationId: id, notBefore: null })),
    ...peopleToTell(occasion, audience).flatMap((person) => {
      const notBefore = occasion.severity === 'urgent' ? null : endOfQuiet(person, occasion.at, audience);
      return person.destinations.map(({ id }) => ({ destinationId: id, notBefore }));
    }),
  ];
}

/**
 * Whose turn it is: the first of the order to whom something leads and who was not told yet.
 * @param told ids of people who were told, or know of it otherwise
 * @returns null: the order is at its end
 */
export function nextTurn(
  { people, personIds }: Audience,
  givenTo: string | null,
  told: ReadonlySet<string> = new Set(),
): PersonToTell | null {
  const isNext = (person: PersonToTell) => !told.has(person.personId) && isReached(person, givenTo);
  return orderOfPeople(people, personIds, givenTo).find(isNext) ?? null;
}

/** Everybody who is told of what is urgent, as at the end of the order. */
export function everybodyToTell({ people }: Audience): PersonToTell[] {
  return people.filter((person) => isReached(person, null));
}

function peopleToTell({ event, ...occasion }: Occasion, audience: Audience): PersonToTell[] {
  const { people } = audience;
  const { severity, kind, givenTo, toPersonId } = occasion;
  if (event === 'closed') return [];
  if (event === 'given')
    return people.filter(({ personId }) => personId === toPersonId && personId !== occasion.personId);
  if (event === 'handed on')
    return toPersonId === null
      ? everybodyToTell(audience)
      : people.filter(({ personId }) => personId === toPersonId);
  if (severity === 'urgent') {
    const first = nextTurn(audience, givenTo);
    return people.filter(
      (person) =>
        person === first ||
        (person.preference.toldFrom !== 'never' && person.preference.urgentTurn === 'at once'),
    );
  }
  return people.filter(
    ({ preference }) =>
      preference.toldFrom !== 'never' &&
      isAsSevere(severity, preference.toldFrom) &&
      !preference.kindsLeftOut.includes(kind),
  );
}

/** Whoever wants to be told of nothing one by one is passed over, unless the alert is theirs. */
function isReached({ personId, preference, destinations }: PersonToTell, givenTo: string | null): boolean {
  return destinations.length > 0 && (preference.toldFrom !== 'never' || personId === givenTo);
}

function isAsSevere(severity: AlertSeverity, least: AlertSeverity): boolean {
  return severities.indexOf(severity) >= severities.indexOf(least);
}

function endOfQuiet({ preference }: PersonToTell, at: string, { timeZone }: Audience): string | null {
  const { quietFrom: from, quietUntil: until } = preference;
  return from === null || until === null ? null : endOfQuietHours(at, { from, until }, timeZone);
}
