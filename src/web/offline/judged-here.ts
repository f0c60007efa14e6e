import type { DayFacts, DeviceJudgement } from '../../sessions/day-facts.js';
import { shownThing } from '../../sessions/shown-thing.js';
import type { ScanView } from '../../sessions/tray.views.js';
import type { TrayThing } from '../../sessions/tray-thing.js';
import type { JudgedHere, WaitingScan } from './waiting-write.js';

type Judged = Extract<DeviceJudgement, { kind: 'judged' }>;

/** A judgement of this device in the form in which the service answers. */
export function scanViewHere(
  { id, sessionId, occurredAt }: WaitingScan,
  { outcome, knownBy, line }: Judged,
  { timeZone }: DayFacts,
): ScanView {
  const shown = (thing: TrayThing) => shownThing(thing, occurredAt, timeZone);
  return {
    id,
    sessionId,
    verdict: outcome.verdict,
    reasons: outcome.reasons,
    knownBy,
    thing: outcome.thing && shown(outcome.thing),
    instead: outcome.instead && shown(outcome.instead),
    choices: outcome.choices.map(shown),
    offers: outcome.decision?.offers ?? [],
    trayLineId: line?.id ?? null,
    occurredAt,
  };
}

/** What is kept of it until the service answers. */
export function judgedHere({ outcome, line }: Judged): JudgedHere {
  const { verdict, thing } = outcome;
  return { verdict, label: thing?.label ?? null, containerId: thing?.containerId ?? null, line };
}
