import type { AlertSeverity } from '../open-condition.js';

/** One delivery in words, the same for every channel; never a client. Each channel writes it in its own form. */
export interface ChannelMessage {
  /** The same when a delivery is repeated, so that a receiver can tell it from a new one. */
  deliveryId: string;
  event: 'opened' | 'worse' | 'due again' | 'handed on' | 'given' | 'closed' | 'summary' | 'test';
  studio: { id: string; name: string };
  /** ISO 8601 instant of what it tells of. */
  occurredAt: string;
  /** Null for a summary and a test, which are of no severity. */
  severity: AlertSeverity | null;
  /** One line: what is wrong, with product and lot. */
  title: string;
  /** Parts with a heading each (null: none); what is wrong, where, and what to do next. */
  parts: { heading: string | null; lines: string[] }[];
  /** Where to act on it in the app, absolute. */
  link: string;
  /** For programs: kind, subject and facts of the alert; null for a summary and a test. */
  alert: {
    id: string;
    kind: string;
    subjectKind: string;
    subjectId: string;
    facts: Record<string, unknown>;
    /** ISO 8601 instant; null: it stands. It may have closed before what is told of it goes out. */
    closedAt: string | null;
  } | null;
}
