import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { v7 as uuidv7 } from 'uuid';
import type { MixView } from '../../sessions/mixes.views.js';
import { useAnswer } from '../service/use-answer.js';
import { type MixPress, type ShownMix, shownMixes } from './shown-mixes.js';
import { listMixes, press } from './tray.requests.js';
import { useInOrder } from './use-in-order.js';

/** How much of one bottle goes into a cup. */
export type Dropped = { containerId: string } & ({ drops: number } | { microlitres: number });

/**
 * The mixes of a session, and what is pressed for them. Each press counts once, however fast they come: it has its own
 * id and is sent in its turn, and the totals hold it at once.
 *
 * @param personId who presses
 * @param nameOf what to call a bottle by its container
 */
export function useMixes(
  { studioId, sessionId, personId }: { studioId: string; sessionId: string; personId: string },
  nameOf: (containerId: string) => string,
) {
  const answers = useQueryClient();
  const key = ['mixes', studioId, sessionId];
  const { answer, problem: listProblem, reload } = useAnswer(key, () => listMixes(studioId, sessionId));
  const [warning, setWarning] = useState<{ containerId: string; messages: string[] }>();
  const sending = useInOrder<MixPress>(
    `drops of ${personId} ${studioId} ${sessionId}`,
    async (pressed) => {
      const { mix, warnings } = await press(studioId, sessionId, pressed);
      // An older answer that is still under way must not take the place of this one.
      await answers.cancelQueries({ queryKey: key });
      answers.setQueryData<MixView[]>(key, (before = []) =>
        before.some(({ id }) => id === mix.id)
          ? before.map((each) => (each.id === mix.id ? mix : each))
          : [...before, mix],
      );
      if ('containerId' in pressed) setWarning({ containerId: pressed.containerId, messages: warnings });
    },
    async () => {},
  );
  const event = () => ({ id: uuidv7(), occurredAt: new Date().toISOString() });
  const pressesOf = (mixId: string, parts: readonly Dropped[]): MixPress[] =>
    parts.map((part) => ({ ...event(), mixId, ...part }));

  /** Begins a cup with what is dropped into it at once. @returns its id */
  const begin = (label: string, parts: readonly Dropped[] = []): string => {
    const cup = { ...event(), begins: label };
    sending.add(cup, ...pressesOf(cup.id, parts));
    return cup.id;
  };
  const drop = (mixId: string, part: Dropped) => sending.add(...pressesOf(mixId, [part]));

  const mixes: ShownMix[] | undefined = answer && shownMixes(answer, sending.waiting, nameOf);
  return {
    mixes,
    /** What of the service's own mixes is known, as it told them. */
    recorded: answer,
    problem: sending.problem ?? listProblem,
    waiting: sending.waiting.length,
    busy: sending.busy,
    sendAgain: sending.sendAgain,
    warning,
    begin,
    drop,
    reload,
  };
}
