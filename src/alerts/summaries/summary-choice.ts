import type { AlertSeverity } from '../open-condition.js';

/** The parts of a morning summary, in the order in which they are said. */
export const summaryPartNames = [
  'answer today',
  'use first',
  'discard',
  'order',
  'orders due',
  'touch-ups at risk',
] as const;
export type SummaryPartName = (typeof summaryPartNames)[number];

/** An alert as a summary tells of it; its facts as they were that morning, never a client. */
export interface SummaryLine {
  alertId: string;
  kind: string;
  subjectKind: string;
  subjectId: string;
  severity: AlertSeverity;
  facts: Record<string, unknown>;
}

export interface SummaryPart {
  name: SummaryPartName;
  /** What comes first is the most pressing. */
  lines: SummaryLine[];
  /** How many more there are than are told. */
  more: number;
}

/** What one person is told on one morning. */
export interface SummaryContent {
  /** The studio's local day, ISO `YYYY-MM-DD`. */
  day: string;
  /** Only those with something to say; none: nothing is to be done. */
  parts: SummaryPart[];
}

/** What stands open, by part. */
export interface SummaryMaterial {
  name: SummaryPartName;
  /** The facts that may hold the day by which lines are ordered, the earliest first; none: the worst come first. */
  dayFacts: readonly string[];
  lines: readonly SummaryLine[];
  /** How many there are of each kind and severity, also of those that were too many to be read. */
  counts: readonly { kind: string; severity: SummaryLine['severity']; count: number }[];
}

export const mostLinesOfPart = 20;

/**
 * What one person is told of all that stands open: of each part the most pressing, and how many more there are. Kinds
 * that the person leaves out are told only when they are urgent.
 */
export function summaryOf(
  day: string,
  material: readonly SummaryMaterial[],
  kindsLeftOut: readonly string[],
): SummaryContent {
  const isTold = ({ kind, severity }: Pick<SummaryLine, 'kind' | 'severity'>) =>
    severity === 'urgent' || !kindsLeftOut.includes(kind);
  const parts = summaryPartNames.flatMap((name): SummaryPart[] => {
    const part = material.find((each) => each.name === name);
    if (part === undefined) return [];
    const told = part.lines.filter(isTold).sort(pressing(part.dayFacts));
    const count = part.counts.filter(isTold).reduce((sum, each) => sum + each.count, 0);
    const lines = told.slice(0, mostLinesOfPart);
    return lines.length === 0 ? [] : [{ name, lines, more: Math.max(0, count - lines.length) }];
  });
  return { day, parts };
}

const ranks = { urgent: 0, warning: 1, notice: 2 };

/** Orders lines; equal ones stay as they came. */
function pressing(dayFacts: readonly string[]): (one: SummaryLine, other: SummaryLine) => number {
  return (one, other) => {
    const [day, otherDay] = [dayOf(one, dayFacts), dayOf(other, dayFacts)];
    if (day !== otherDay) return day < otherDay ? -1 : 1;
    return ranks[one.severity] - ranks[other.severity];
  };
}

/** What has no day comes after what has one. */
function dayOf({ facts }: SummaryLine, dayFacts: readonly string[]): string {
  const days = dayFacts.map((name) => facts[name]).filter((day) => typeof day === 'string');
  return days[0] ?? '~';
}
