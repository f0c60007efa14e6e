export class AlertView {
  id: string;
  /** Such as `low stock`, `use-by near`, `expired on the shelf`. */
  kind: string;
  /** What it is about, such as `product`, `lot` or `container`. */
  subjectKind: string;
  subjectId: string;
  severity: 'notice' | 'warning' | 'urgent';
  /** What a reader needs: names of products, lot codes, dates, quantities. */
  facts: Record<string, unknown>;
  openedAt: string;
  acknowledgedAt: string | null;
  /** The person who has seen to it. */
  acknowledgedBy: string | null;
  closedAt: string | null;
  /** Nobody is reminded of it before. */
  putOffUntil: string | null;
  /** The person who sees to it. */
  givenTo: string | null;
  /** Who closed it while its condition stood; null: it closed by itself. */
  closedBy: string | null;
  /** True: it tells what happened once, which does not end by itself; whoever acknowledges it closes it. */
  endsWhenAcknowledged: boolean;
}

/** One step of an alert's history. */
export class AlertEntryView {
  /** Counts up in the studio without gaps; null for a step before histories were kept, told from the alert itself. */
  sequence: number | null;
  event:
    | 'opened'
    | 'worse'
    | 'milder'
    | 'acknowledged'
    | 'put off'
    | 'due again'
    | 'given'
    | 'handed on'
    | 'noted'
    | 'closed'
    | 'ended';
  /** How bad it was from then on. */
  severity: 'notice' | 'warning' | 'urgent';
  /** Who did it; null: the service itself. */
  personId: string | null;
  /** To whom it was given or handed on. Handed on to null: nobody acknowledged it, and everybody was told once more. */
  toPersonId: string | null;
  /** Until when it was put off. */
  until: string | null;
  hasNote: boolean;
  /** Null also for who may not see clients, whom a note may name: they see their own. */
  note: string | null;
  recordedAt: string;
}

/** An alert with its history. */
export class AlertHistoryView {
  alert: AlertView;
  /** The first step first; of more than 200 the latest 200. */
  history: AlertEntryView[];
  /** How many steps came before those that are shown. */
  earlierSteps: number;
}

export class AlertPageView {
  /** The latest first. */
  items: AlertView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
}

export class AlertDeliveryView {
  id: string;
  event: 'opened' | 'worse' | 'due again' | 'handed on' | 'given' | 'closed' | 'summary' | 'test';
  channel: 'log' | 'mail' | 'webhook' | 'push';
  /** Null: the log of the service. */
  destinationId: string | null;
  state: 'pending' | 'sent' | 'undeliverable';
  /** Attempts whose end is known. */
  attempts: number;
  /** Attempts that were cut off before their end was known: the receiver may have got it as often beside. */
  unknownAttempts: number;
  /** When it is tried next, while it is pending. */
  nextAttemptAt: string;
  lastError: string | null;
  createdAt: string;
  settledAt: string | null;
}

/** What a sweep changed. */
export class SweepView {
  opened: number;
  refreshed: number;
  closed: number;
}
