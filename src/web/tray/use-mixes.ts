import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { v7 as uuidv7 } from 'uuid';
import type { DayFactsView } from '../../sessions/day-facts.views.js';
import type { MixView } from '../../sessions/mixes.views.js';
import { useWaiting, type Whose } from '../offline/use-waiting.js';
import { useConnection } from '../service/connection.js';
import { useAnswer } from '../service/use-answer.js';
import { type MixPress, type ShownMix, shownMixes } from './shown-mixes.js';
import { listMixes } from './tray.requests.js';

/** How much of one bottle goes into a cup. */
export type Dropped = { containerId: string } & ({ drops: number } | { microlitres: number });

/**
 * The mixes of a session, and what is pressed for them. Each press counts once, however fast they come: it has its own
 * id and is sent in its turn, and the totals hold it at once.
 *
 * @param whose who presses, at which tray
 * @param facts what this device knows of the day; undefined: nothing
 * @param nameOf what to call a bottle by its container
 */
export function useMixes(
  whose: Whose,
  facts: DayFactsView | undefined,
  nameOf: (containerId: string) => string,
) {
  const { studioId, sessionId } = whose;
  const answers = useQueryClient();
  const key = ['mixes', studioId, sessionId];
  const { answer, problem: listProblem, reload } = useAnswer(key, () => listMixes(studioId, sessionId));
  const [warning, setWarning] = useState<{ containerId: string; messages: string[] }>();
  const { isReached } = useConnection();
  const sending = useWaiting('mix press', whose, ({ press: pressed }, answered) => {
    if (!('mix' in answered)) return;
    const { mix, warnings } = answered;
    // An older answer that is still under way must not take the place of this one. Not waited for, so that the press goes
    // from what waits to what is recorded in one step, and the total never falls between.
    void answers.cancelQueries({ queryKey: key }, { revert: false });
    answers.setQueryData<MixView[]>(key, (before = []) =>
      before.some(({ id }) => id === mix.id)
        ? before.map((each) => (each.id === mix.id ? mix : each))
        : [...before, mix],
    );
    if ('containerId' in pressed) setWarning({ containerId: pressed.containerId, messages: warnings });
  });
  const add = (...presses: MixPress[]) =>
    sending.add(...presses.map((press) => ({ id: press.id, occurredAt: press.occurredAt, press })));
  const event = () => ({ id: uuidv7(), occurredAt: new Date().toISOString() });
  const pressesOf = (mixId: string, parts: readonly Dropped[]): MixPress[] =>
    parts.map((part) => ({ ...event(), mixId, ...part }));

  /** Begins a cup with what is dropped into it at once. @returns its id */
  const begin = (label: string, parts: readonly Dropped[] = []): string => {
    const cup = { ...event(), begins: label };
    add(cup, ...pressesOf(cup.id, parts));
    return cup.id;
  };
  const drop = (mixId: string, part: Dropped) => {
    add(...pressesOf(mixId, [part]));
  };

  // A page that opens without network shows what this device knows, with what was pressed on it.
  const known = facts?.mixes.filter((mix) => mix.sessionId === sessionId);
  const recorded = answer ?? (isReached ? undefined : (known ?? []));
  const presses = sending.waiting.map(({ press }) => press);
  const mixes: ShownMix[] | undefined = recorded && shownMixes(recorded, presses, nameOf);
  return {
    mixes,
    problem: sending.problem ?? (isReached ? listProblem : undefined),
    waiting: sending.waiting.length,
    busy: sending.busy,
    sendAgain: sending.sendAgain,
    warning,
    begin,
    drop,
    reload,
  };
}
