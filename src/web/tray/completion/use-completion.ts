import { useRef, useState } from 'react';
import type { Outcome } from '../../../sessions/completion-rules.js';
import type { TrayLineView } from '../../../sessions/tray.views.js';
import { Events } from '../../service/events.js';
import { useAction } from '../../service/use-action.js';
import { forget, useKept } from '../kept.js';
import { complete } from '../tray.requests.js';
import {
  type Besides,
  type CompletionDraft,
  completionOf,
  outcomeOf,
  untouched,
} from './completion-draft.js';

/** What can be said of single lines. */
interface SaidOfLines {
  outcomes: Outcome;
  drops: number;
  reasons: string;
}

/**
 * How a session ended, as far as it was said, until the service has booked it. What was said outlives signing in again in
 * the page's place.
 *
 * @param lines what lies on the tray
 * @param mixedContainerIds bottles that are in a mix
 * @param reload asks for the tray again
 */
export function useCompletion(
  { studioId, sessionId, personId }: { studioId: string; sessionId: string; personId: string },
  lines: readonly TrayLineView[],
  mixedContainerIds: ReadonlySet<string>,
  reload: () => Promise<void>,
) {
  const key = `completion of ${personId} ${studioId} ${sessionId}`;
  const [draft, setDraft] = useKept<CompletionDraft>(key, untouched);
  /** The line whose wrapper was shown last. */
  const [calledId, setCalledId] = useState<string>();
  const [bookedBesides, setBookedBesides] = useState<readonly Besides[]>([]);
  const events = useRef(new Events()).current;
  const completion = completionOf(draft, lines, mixedContainerIds, personId);
  const { run, busy, problem } = useAction(async () => {
    if (!completion) return;
    try {
      await complete(studioId, sessionId, { ...completion, ...events.of(completion) });
    } catch (error) {
      // What changed since, such as a hold, is shown at its line.
      await reload();
      throw error;
    }
    setBookedBesides(draft.besides);
    forget(key);
    await reload();
  });

  const change = (part: Partial<CompletionDraft>) => setDraft((before) => ({ ...before, ...part }));
  const say = <Part extends keyof SaidOfLines>(part: Part, lineId: string, value: SaidOfLines[Part]) =>
    setDraft((before) => ({ ...before, [part]: { ...before[part], [lineId]: value } }));

  /**
   * Marks the line a wrapper belongs to: of several alike, the first whose wrapper was not shown yet.
   * @returns false when there are more wrappers than pieces
   */
  const showWrapperOf = (found: readonly TrayLineView[]): boolean => {
    const [first] = found;
    const line =
      found.find(({ id }) => !draft.wrappers.includes(id)) ??
      (first?.stockForm === 'container' ? first : undefined);
    if (!line) return false;
    setCalledId(line.id);
    setDraft((before) => ({
      ...before,
      wrappers: [...new Set([...before.wrappers, line.id])],
      // An opened wrapper went back unopened in no case; whether it was used is theirs to say.
      outcomes:
        outcomeOf(before, line, mixedContainerIds) === 'back unopened'
          ? { ...before.outcomes, [line.id]: 'used' }
          : before.outcomes,
    }));
    return true;
  };

  const addBesides = (added: Besides) =>
    setDraft((before) => {
      const same = before.besides.find(({ containerId }) => containerId === added.containerId);
      const others = before.besides.filter((each) => each !== same);
      const amount = added.isCounted ? (same?.amount ?? 0) + added.amount : added.amount;
      return { ...before, besides: [...others, { ...added, amount }] };
    });

  return {
    draft,
    calledId,
    /** What was used besides, once it is booked. */
    bookedBesides,
    /** Whether everything was said that has to be. */
    isWhole: completion !== undefined,
    outcomeOf: (line: TrayLineView) => outcomeOf(draft, line, mixedContainerIds),
    /** Why the service would not take what was said of a line. */
    faultOf: (lineId: string) => problem?.document.lines?.find((fault) => fault.lineId === lineId)?.message,
    change,
    say,
    showWrapperOf,
    addBesides,
    complete: () => void run(),
    busy,
    problem,
  };
}
