import { type ContactStanding, isSettled } from './contact-standing.js';

/** How many are to be told, and how it stands with them. */
export interface TellTotals {
  toTell: number;
  notTried: number;
  noAnswer: number;
  messageLeft: number;
  reached: number;
  refused: number;
  unreachable: number;
  erased: number;
  outstanding: number;
}

/** Somebody to be told, as far as they are counted. */
export interface Counted {
  standing: ContactStanding;
  erased: boolean;
}

export function isOutstanding({ standing, erased }: Counted): boolean {
  return !erased && !isSettled(standing);
}

export function tellTotals(recipients: readonly Counted[]): TellTotals {
  const count = (is: (one: Counted) => boolean) => recipients.filter(is).length;
  const standing = (wanted: ContactStanding) => count((one) => one.standing === wanted);
  return {
    toTell: recipients.length,
    notTried: standing('not tried'),
    noAnswer: standing('no answer'),
    messageLeft: standing('message left'),
    reached: standing('reached'),
    refused: standing('refused'),
    unreachable: standing('unreachable'),
    erased: count(({ standing: now, erased }) => erased && !isSettled(now)),
    outstanding: count(isOutstanding),
  };
}
