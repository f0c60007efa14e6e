import { useCallback, useEffect, useRef, useState } from 'react';
import { ServiceProblem } from './problem.js';

interface Settled<Answer> {
  key: string;
  answer?: Answer;
  problem?: ServiceProblem;
}

/**
 * What the service answers to a question; undefined until it did.
 * @param key says what is asked: another key is another question
 */
export function useAnswer<Answer>(
  key: string,
  ask: () => Promise<Answer>,
): { answer: Answer | undefined; problem: ServiceProblem | undefined; reload(): Promise<void> } {
  const [settled, setSettled] = useState<Settled<Answer>>();
  const latest = useRef(ask);
  latest.current = ask;
  const asked = useRef(0);

  const reload = useCallback(async () => {
    asked.current += 1;
    const turn = asked.current;
    const settle = (result: Omit<Settled<Answer>, 'key'>) => {
      // An answer that was overtaken by a later question is dropped.
      if (turn === asked.current) setSettled({ key, ...result });
    };
    try {
      settle({ answer: await latest.current() });
    } catch (error) {
      if (!(error instanceof ServiceProblem)) throw error;
      settle({ problem: error });
    }
  }, [key]);

  useEffect(() => {
    void reload();
  }, [reload]);

  const current = settled?.key === key ? settled : undefined;
  return { answer: current?.answer, problem: current?.problem, reload };
}
