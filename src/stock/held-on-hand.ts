import { hasEnded } from './container-transitions.js';

/** A container that is here, with the holds that reach it. */
export interface HeldContainer {
  containerId: string;
  lotId: string;
  labelCode: string;
  /** By the book; a bottle is one. */
  pieces: number;
  state: 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';
  place: string;
  /** Whether that place is where things are put that nobody may take. */
  isSetAside: boolean;
  holds: readonly {
    kind: 'quarantine' | 'recall' | 'compliance';
    reason: string;
    on: 'container' | 'lot' | 'parent lot';
    /** ISO 8601 instant. */
    since: string;
  }[];
}

export interface HeldOnHand {
  kind: 'held stock on hand';
  subjectKind: 'lot';
  subjectId: string;
  severity: 'notice' | 'warning';
  facts: {
    pieces: number;
    /** Where they stand, each once. */
    places: string[];
    /** Which containers, where only some of the lot are held. */
    labelCodes?: string[];
    holdKinds: string[];
    holdReasons: string[];
    /** When the first of the holds was placed. */
    heldSince: string;
    whatToDo: 'set it apart' | 'return or destroy it as the recall says' | 'decide on it';
  };
}

const mostLabels = 10;

/**
 * Held goods that are still here, one condition a lot, since a lot is set apart as one: a warning while some of it stands
 * among what is used, a notice once all of it is set aside and waits only for what is decided. It is never urgent: that is
 * the recall itself, once, however many lots it reaches. Practice stock counts too, for a recall asks for that as well. It
 * ends when nothing of it is here or no hold stands.
 */
export function heldOnHand(containers: readonly HeldContainer[]): HeldOnHand[] {
  const byLot = new Map<string, HeldContainer[]>();
  for (const container of containers) {
    if (container.pieces <= 0 || hasEnded(container.state) || container.holds.length === 0) continue;
    byLot.set(container.lotId, [...(byLot.get(container.lotId) ?? []), container]);
  }
  return [...byLot].map(([lotId, held]) => ofLot(lotId, held));
}

function ofLot(subjectId: string, held: readonly HeldContainer[]): HeldOnHand {
  const holds = held.flatMap((container) => container.holds);
  const isRecalled = holds.some(({ kind }) => kind === 'recall');
  const isSetAside = held.every((container) => container.isSetAside);
  const inPart = holds.every(({ on }) => on === 'container');
  const decided = isRecalled ? 'return or destroy it as the recall says' : 'decide on it';
  return {
    kind: 'held stock on hand',
    subjectKind: 'lot',
    subjectId,
    severity: isSetAside ? 'notice' : 'warning',
    facts: {
      pieces: held.reduce((sum, { pieces }) => sum + pieces, 0),
      places: sorted(held.map(({ place }) => place)),
      ...(inPart && { labelCodes: sorted(held.map(({ labelCode }) => labelCode)).slice(0, mostLabels) }),
      holdKinds: sorted(holds.map(({ kind }) => kind)),
      holdReasons: sorted(holds.map(({ reason }) => reason)),
      heldSince: sorted(holds.map(({ since }) => since))[0] ?? '',
      whatToDo: isSetAside ? decided : 'set it apart',
    },
  };
}

/** Each once, in an order that does not change by itself. */
function sorted(texts: readonly string[]): string[] {
  return [...new Set(texts)].sort();
}
