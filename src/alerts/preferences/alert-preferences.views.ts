/** How one person is told of alerts. */
export class AlertPreferenceView {
  personId: string;
  /** Told of each alert from this severity on; what is milder is in the summary of the morning. */
  toldFrom: 'notice' | 'warning' | 'urgent' | 'never';
  /** Of urgent ones: at once, or only when it is their turn in the order of people. */
  urgentTurn: 'at once' | 'in turn';
  summary: 'daily' | 'never';
  /** Local time, `HH:MM`; null: the studio's morning. */
  summaryAt: string | null;
  /** Local times, `HH:MM`, between which only what is urgent is told; both null: none. */
  quietFrom: string | null;
  quietUntil: string | null;
  /** Kinds of alerts this person is not told of, unless they are urgent. */
  kindsLeftOut: string[];
  /** True: the person chose nothing, and this is assumed of their role. */
  isDefault: boolean;
  /** Null while it is assumed. */
  version: number | null;
}

/** How somebody who works in the studio is told, and whether anything leads to them. */
export class ToldPersonView {
  personId: string;
  role: 'owner' | 'manager' | 'artist' | 'auditor' | 'chain manager';
  preference: AlertPreferenceView;
  /** Destinations that work just now: neither paused nor stopped. */
  mailAddresses: number;
  browsers: number;
}
