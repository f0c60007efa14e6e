import { minutesBetween } from './drill-score.js';

/** The way through a recall, in the order in which it is usually gone. */
export const drillSteps = [
  'notice read',
  'scope settled',
  'stock listed',
  'stock found',
  'exposures listed',
  'messages prepared',
  'balance drawn',
  'closed',
] as const;
export type DrillStep = (typeof drillSteps)[number];

/** A step that was done: at what instant, by the service's clock. */
export interface DoneStep {
  step: string;
  doneAt: string;
  personId: string | null;
}

/** A step of the way, and how long it took from what was done before it; null: it was not done. */
export interface TimedStep {
  step: DrillStep;
  doneAt: string | null;
  minutes: number | null;
  personId: string | null;
}

/**
 * How long each step took. A step that was noted more than once was done when it was noted first. Steps may be gone in any
 * order: each is timed from whatever was done last before it, so that the minutes add up to the whole.
 */
export function timedSteps(startedAt: string, done: readonly DoneStep[]): TimedStep[] {
  const first = new Map<string, DoneStep>();
  for (const each of done) {
    const known = first.get(each.step);
    if (!known || each.doneAt < known.doneAt) first.set(each.step, each);
  }
  const inTime = [...first.values()].sort((one, other) =>
    one.doneAt === other.doneAt
      ? orderOf(one.step) - orderOf(other.step)
      : one.doneAt < other.doneAt
        ? -1
        : 1,
  );
  const minutes = new Map<string, number>();
  let before = startedAt;
  for (const { step, doneAt } of inTime) {
    minutes.set(step, minutesBetween(before, doneAt));
    if (doneAt > before) before = doneAt;
  }
  return drillSteps.map((step) => ({
    step,
    doneAt: first.get(step)?.doneAt ?? null,
    minutes: minutes.get(step) ?? null,
    personId: first.get(step)?.personId ?? null,
  }));
}

function orderOf(step: string): number {
  return drillSteps.indexOf(step as DrillStep);
}
