import { useCallback, useRef, useState } from 'react';
import { ServiceProblem } from './problem.js';

export interface Action<Parameters extends unknown[]> {
  run(...parameters: Parameters): Promise<void>;
  /** Whether it is being carried out. */
  busy: boolean;
  /** Why the last try failed. */
  problem: ServiceProblem | undefined;
}

/** Something the user asks the service to do: one at a time, with what came of it. */
export function useAction<Parameters extends unknown[]>(
  work: (...parameters: Parameters) => Promise<void>,
): Action<Parameters> {
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<ServiceProblem>();
  const underWay = useRef(false);
  const latest = useRef(work);
  latest.current = work;
  const run = useCallback(async (...parameters: Parameters) => {
    if (underWay.current) return;
    underWay.current = true;
    setBusy(true);
    setProblem(undefined);
    try {
      await latest.current(...parameters);
    } catch (error) {
      if (!(error instanceof ServiceProblem)) throw error;
      setProblem(error);
    } finally {
      underWay.current = false;
      setBusy(false);
    }
  }, []);
  return { run, busy, problem };
}
