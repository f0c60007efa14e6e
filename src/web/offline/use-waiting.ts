import { useCallback, useEffect, useRef, useState } from 'react';
import { ServiceProblem } from '../service/problem.js';
import { outgoing, useOutgoing } from './outgoing.js';
import type { WriteAnswer } from './send-write.js';
import type { WaitingWrite } from './waiting-write.js';

export type WaitingOf<Kind extends WaitingWrite['kind']> = Extract<WaitingWrite, { kind: Kind }>;

/** Whose entry it is, and of which tray. */
export interface Whose {
  studioId: string;
  sessionId: string;
  personId: string;
}

/**
 * What of one kind somebody did at a tray and was not answered yet, in its order.
 * @param onAnswered when the service has answered one; says false when the page does not show the answer. A refusal is told
 * as the problem, and is over
 */
export function useWaiting<Kind extends WaitingWrite['kind']>(
  kind: Kind,
  { studioId, sessionId, personId }: Whose,
  onAnswered?: (write: WaitingOf<Kind>, answer: WriteAnswer) => unknown,
) {
  const { waiting, isSending, problem } = useOutgoing();
  const [refusal, setRefusal] = useState<ServiceProblem>();
  const latest = useRef(onAnswered);
  latest.current = onAnswered;
  const isOurs = useCallback(
    (write: WaitingWrite): write is WaitingOf<Kind> =>
      write.kind === kind && write.sessionId === sessionId && write.personId === personId,
    [kind, sessionId, personId],
  );
  useEffect(
    () =>
      outgoing.onSettled((write, answer) => {
        if (!isOurs(write)) return false;
        if (!(answer instanceof ServiceProblem)) return latest.current?.(write, answer) !== false;
        setRefusal(answer);
        return true;
      }),
    [isOurs],
  );
  const add = (...writes: Omit<WaitingOf<Kind>, keyof Whose | 'kind'>[]) => {
    setRefusal(undefined);
    const ours = writes.map(
      (write) => ({ ...write, kind, studioId, sessionId, personId }) as WaitingOf<Kind>,
    );
    outgoing.add(...ours);
    return ours;
  };
  return {
    waiting: waiting.filter(isOurs),
    busy: isSending,
    /** That the service is not reached is said once for the whole page. */
    problem: refusal ?? (problem?.code === 'unreachable' ? undefined : problem),
    add,
    sendAgain: () => void outgoing.send(),
  };
}
