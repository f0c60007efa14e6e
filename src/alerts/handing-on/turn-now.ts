import { type Audience, everybodyToTell, nextTurn } from '../outbox/who-is-told.js';

/** An urgent alert that nobody acknowledged. */
export interface WaitingTurn {
  /** Whoever sees to it, or null. */
  givenTo: string | null;
  /** How many turns it had; 0: nothing led to anybody so far. */
  turn: number;
  /** Whether the present turn lasted as long as the studio lets one last. */
  isOver: boolean;
  /** Ids of people who were told since it became urgent, came back or was given to somebody. */
  told: ReadonlySet<string>;
}

/**
 * To whom a waiting alert is handed on now. One of which nobody could be told is told to the first whom something leads
 * to, at once. At the end of the order everybody is told once more; while nothing leads to anybody, that waits.
 *
 * @returns the id of the person, or null for everybody; undefined: it waits
 */
export function turnNow(
  { givenTo, turn, isOver, told }: WaitingTurn,
  audience: Audience,
): string | null | undefined {
  const next = nextTurn(audience, givenTo, told);
  if (next !== null) return isOver || turn === 0 ? next.personId : undefined;
  return isOver && everybodyToTell(audience).length > 0 ? null : undefined;
}
