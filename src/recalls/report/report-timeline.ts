import { localDay } from '../../identity/local-day.js';

/** Something that happened with a recall. */
export interface ReportEvent {
  /** By the service's clock. */
  at: string;
  event: string;
  words: string;
  /** Null: several, or the service itself. */
  personId: string | null;
}

interface Recorded {
  at: string;
  personId: string | null;
}

/** The rows of a recall, as far as its timeline tells of them. */
export interface TimelineFacts {
  title: string;
  kind: 'recall' | 'drill';
  /** In the order of their numbers. */
  scopes: (Recorded & { number: number; reason: string | null; noticeSource: string | null; lots: number })[];
  /** Holds that were placed, and releases, by instant. */
  holds: (Recorded & { lots: number })[];
  releases: (Recorded & { lots: number })[];
  decisions: (Recorded & { lot: string; decision: string; reason: string })[];
  findings: (Recorded & { result: string })[];
  contacts: (Recorded & { audience: string; outcome: string })[];
  dispositions: (Recorded & { kind: string; pieces: number })[];
  steps: (Recorded & { step: string })[];
  closings: (Recorded & { outcome: string; reason: string | null; overridden: number })[];
}

/**
 * What happened, the earliest first, in English. Looking for containers, telling people and disposing of stock are told a
 * day at a time: there may be thousands of them.
 */
export function reportTimeline(facts: TimelineFacts, timeZone: string): ReportEvent[] {
  const events: ReportEvent[] = [
    ...facts.scopes.map(({ at, personId, number, reason, noticeSource, lots }) => ({
      at,
      personId,
      event: number === 1 ? 'opened' : 'scope amended',
      words:
        number === 1
          ? `${facts.kind === 'drill' ? 'Drill' : 'Recall'} opened${noticeWords(noticeSource)}; its scope meets ${amount(lots, 'lot')}.`
          : `Scope amended (version ${number})${noticeWords(noticeSource)}: ${sentence(reason ?? 'no reason was given')} It meets ${amount(lots, 'lot')} now.`,
    })),
    ...facts.holds.map(({ at, personId, lots }) => ({
      at,
      personId,
      event: 'held',
      words: `${amount(lots, 'lot')} put on hold.`,
    })),
    ...facts.releases.map(({ at, personId, lots }) => ({
      at,
      personId,
      event: 'released',
      words: `Hold released on ${amount(lots, 'lot')}.`,
    })),
    ...facts.decisions.map(({ at, personId, lot, decision, reason }) => ({
      at,
      personId,
      event: 'decided',
      words: `Lot ${lot} decided to be ${decision}: ${sentence(reason)}`,
    })),
    ...byDay(facts.findings, timeZone, 'looked for', (found) => {
      const counts = countBy(found, ({ result }) => result);
      return `Containers looked for – ${list(counts)}.`;
    }),
    ...byDay(facts.contacts, timeZone, 'told', (attempts) => {
      const counts = countBy(attempts, ({ audience, outcome }) => `${audience}, ${outcome}`);
      return `${amount(attempts.length, 'attempt')} to tell somebody – ${list(counts)}.`;
    }),
    ...byDay(facts.dispositions, timeZone, 'disposed', (disposed) => {
      const counts = countBy(disposed, ({ kind }) => kind);
      const pieces = disposed.reduce((sum, each) => sum + each.pieces, 0);
      return `Containers disposed of – ${list(counts)}; ${amount(pieces, 'piece')} in all.`;
    }),
    ...facts.steps.map(({ at, personId, step }) => ({
      at,
      personId,
      event: 'step',
      words: `Step done: ${step}.`,
    })),
    ...facts.closings.map(({ at, personId, outcome, reason, overridden }) => ({
      at,
      personId,
      event: outcome,
      words:
        outcome === 'closed'
          ? `Closed${overridden === 0 ? '' : `, with ${amount(overridden, 'obstacle')} overridden`}.`
          : `Withdrawn: ${sentence(reason ?? 'no reason was given')}`,
    })),
  ];
  return events
    .map((event, index) => ({ event, index }))
    .sort((one, other) =>
      one.event.at === other.event.at ? one.index - other.index : one.event.at < other.event.at ? -1 : 1,
    )
    .map(({ event }) => event);
}

/** One event for each local day, at the instant of its last row. */
function byDay<Row extends Recorded>(
  rows: readonly Row[],
  timeZone: string,
  event: string,
  words: (rows: Row[]) => string,
): ReportEvent[] {
  const days = new Map<string, Row[]>();
  for (const row of rows) {
    const day = localDay(row.at, timeZone);
    const known = days.get(day);
    if (known) known.push(row);
    else days.set(day, [row]);
  }
  return [...days.values()].map((ofDay) => {
    const people = new Set(ofDay.map(({ personId }) => personId));
    return {
      at:
        ofDay
          .map(({ at }) => at)
          .sort()
          .at(-1) ?? '',
      event,
      words: words(ofDay),
      personId: people.size === 1 ? (ofDay[0]?.personId ?? null) : null,
    };
  });
}

function countBy<Row>(rows: readonly Row[], nameOf: (row: Row) => string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const row of rows) counts.set(nameOf(row), (counts.get(nameOf(row)) ?? 0) + 1);
  return counts;
}

function list(counts: ReadonlyMap<string, number>): string {
  return [...counts].map(([name, count]) => `${name}: ${count}`).join('; ');
}

function amount(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}

function noticeWords(source: string | null): string {
  if (source === null) return '';
  if (source === 'entered') return ' from what was entered';
  if (source === 'fetched') return ' from a notice that was published';
  return source === 'pasted' ? ' from the text of a notice' : ` from a notice in a file (${source})`;
}
