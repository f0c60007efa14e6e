import type { Outcome } from '../../../sessions/completion-rules.js';
import type { TrayLineView } from '../../../sessions/tray.views.js';
import type { Completion } from '../tray.requests.js';
import { prefilledOutcome } from './prefilled-outcome.js';

/** Something that was used though it never lay on the tray. */
export interface Besides {
  containerId: string;
  label: string;
  lotCode: string | null;
  isCounted: boolean;
  /** Pieces of what is counted, else drops; 0 drops: not known. */
  amount: number;
}

/** What was said so far of how a session ended; what was not touched stays as it is prefilled. */
export interface CompletionDraft {
  outcomes: Readonly<Record<string, Outcome>>;
  /** Drops used outside any mix, by line. */
  drops: Readonly<Record<string, number>>;
  /** Why something on hold was used, by line. */
  reasons: Readonly<Record<string, string>>;
  /** Lines whose wrapper was shown. */
  wrappers: readonly string[];
  besides: readonly Besides[];
  hasComplications: boolean;
  complications: string;
  /** Empty: whoever is signed in. */
  signedBy: string;
}

export const untouched: CompletionDraft = {
  outcomes: {},
  drops: {},
  reasons: {},
  wrappers: [],
  besides: [],
  hasComplications: false,
  complications: '',
  signedBy: '',
};

/** What became of a line, as said or prefilled; null: it has still to be said. */
export function outcomeOf(
  draft: CompletionDraft,
  line: TrayLineView,
  mixedContainerIds: ReadonlySet<string>,
): Outcome | null {
  return draft.outcomes[line.id] ?? prefilledOutcome(line, mixedContainerIds);
}

/**
 * The completion as the service takes it; undefined while something has still to be said. Only what somebody said is named:
 * of the rest the service takes the same for granted, unless it was put on hold at this very moment, and then it asks.
 */
export function completionOf(
  draft: CompletionDraft,
  lines: readonly TrayLineView[],
  mixedContainerIds: ReadonlySet<string>,
  personId: string,
): Omit<Completion, 'id' | 'occurredAt'> | undefined {
  const said: Completion['lines'] = [];
  for (const line of lines) {
    const outcome = outcomeOf(draft, line, mixedContainerIds);
    if (outcome === null) return undefined;
    if (draft.outcomes[line.id] === undefined) continue;
    const drops = draft.drops[line.id] ?? 0;
    const reason = draft.reasons[line.id]?.trim() ?? '';
    said.push({
      trayLineId: line.id,
      outcome,
      ...(outcome === 'used' && drops > 0 && { drops }),
      ...(outcome === 'used' && reason !== '' && { reason }),
    });
  }
  const complications = draft.complications.trim();
  if (draft.hasComplications && complications === '') return undefined;
  return {
    lines: said,
    besides: draft.besides.map(({ containerId, isCounted, amount }) => ({
      containerId,
      ...(isCounted ? { pieces: amount } : amount > 0 && { drops: amount }),
    })),
    complications: draft.hasComplications ? complications : null,
    signedBy: draft.signedBy === '' ? personId : draft.signedBy,
  };
}
