import type { AlertSeverity } from '../open-condition.js';

/** How somebody is told of alerts, as they chose it or as it is assumed. */
export interface HowToTell {
  /** Told of each alert from this severity on, beside the summary. */
  toldFrom: AlertSeverity | 'never';
  /** Of urgent ones: at once, or only when it is their turn in the order of people. */
  urgentTurn: 'at once' | 'in turn';
  summary: 'daily' | 'never';
  /** Local time, `HH:MM`; null: the studio's morning. */
  summaryAt: string | null;
  /** Local times, `HH:MM`, between which only what is urgent is told; both null: none. */
  quietFrom: string | null;
  quietUntil: string | null;
  /** Kinds of alerts the person is not told of, unless they are urgent. */
  kindsLeftOut: string[];
}

/**
 * What is assumed of whoever chose nothing. Those who work at the treatment chair and the desk are told of what is
 * urgent; an auditor, who only reads, and a chain manager, who has many studios, are told of nothing one by one – unless
 * the studio put them into its order of people, which says that they are to be told. A summary goes to those who run the
 * studio. [C]
 */
export function defaultPreference(
  role: 'owner' | 'manager' | 'artist' | 'auditor' | 'chain manager',
  isInOrder: boolean,
): HowToTell {
  const worksHere = role === 'owner' || role === 'manager' || role === 'artist';
  return {
    toldFrom: worksHere || isInOrder ? 'urgent' : 'never',
    urgentTurn: 'in turn',
    summary: role === 'owner' || role === 'manager' ? 'daily' : 'never',
    summaryAt: null,
    quietFrom: null,
    quietUntil: null,
    kindsLeftOut: [],
  };
}
