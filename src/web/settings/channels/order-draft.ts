import type { HandingOnView } from '../../../alerts/handing-on/handing-on.views.js';
import type { HandingOnChoice } from './channels.requests.js';

/** The order of people while it is edited. */
export interface OrderDraft {
  handsOn: boolean;
  minutes: string;
  /** Ids with a space between, the first first. */
  people: string;
}

/** What is offered where nothing was handed on before, in minutes. */
const usualMinutes = 60;

export function draftOf({ afterMinutes, personIds }: HandingOnView): OrderDraft {
  return {
    handsOn: afterMinutes !== null,
    minutes: String(afterMinutes ?? usualMinutes),
    people: personIds.join(' '),
  };
}

/** @param version of what was read; null: nothing was chosen yet */
export function choiceOf(
  { handsOn, minutes, people }: OrderDraft,
  version: number | null,
): Omit<HandingOnChoice, 'id'> {
  return {
    afterMinutes: handsOn ? Number(minutes) : null,
    personIds: idsOf(people),
    ...(version !== null && { version }),
  };
}

export function idsOf(people: string): string[] {
  return people === '' ? [] : people.split(' ');
}

/** One place nearer to the first; the first stays. */
export function movedUp(people: string, personId: string): string {
  const ids = idsOf(people);
  const at = ids.indexOf(personId);
  if (at < 1) return people;
  return [...ids.slice(0, at - 1), personId, ...ids.slice(at - 1, at), ...ids.slice(at + 1)].join(' ');
}
