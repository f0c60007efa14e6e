import type { AlertPreferenceView } from '../../alerts/preferences/alert-preferences.views.js';
import type { HowToBeTold } from './told.requests.js';

/** How one is told while it is edited: all of it texts, empty where there is nothing. */
export interface PreferenceDraft {
  toldFrom: AlertPreferenceView['toldFrom'];
  urgentTurn: AlertPreferenceView['urgentTurn'];
  summary: AlertPreferenceView['summary'];
  summaryAt: string;
  quietFrom: string;
  quietUntil: string;
  /** One on each line, in the order of the alphabet: no kind has an end of line in it. */
  kindsLeftOut: string;
}

export function draftOf(preference: AlertPreferenceView): PreferenceDraft {
  const { toldFrom, urgentTurn, summary, summaryAt, quietFrom, quietUntil, kindsLeftOut } = preference;
  return {
    ...{ toldFrom, urgentTurn, summary },
    summaryAt: summaryAt ?? '',
    quietFrom: quietFrom ?? '',
    quietUntil: quietUntil ?? '',
    kindsLeftOut: writtenKinds(kindsLeftOut),
  };
}

/** @param version of what was read; null: nothing was chosen yet */
export function chosenBy(draft: PreferenceDraft, version: number | null): HowToBeTold {
  const { summaryAt, quietFrom, quietUntil, kindsLeftOut, ...chosen } = draft;
  return {
    ...chosen,
    summaryAt: orNull(summaryAt),
    quietFrom: orNull(quietFrom),
    quietUntil: orNull(quietUntil),
    kindsLeftOut: kindsOf(kindsLeftOut),
    ...(version !== null && { version }),
  };
}

export function kindsOf(written: string): string[] {
  return written === '' ? [] : written.split('\n');
}

export function writtenKinds(kinds: readonly string[]): string {
  return [...kinds].sort().join('\n');
}

function orNull(text: string): string | null {
  return text === '' ? null : text;
}
