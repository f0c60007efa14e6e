import { useEffect, useState } from 'react';
import type { ServiceProblem } from '../service/problem.js';

/** Whole seconds until the service wants to be asked again, counted down; 0 when there is no wait. */
export function useWait(problem: ServiceProblem | undefined): number {
  const [waiting, setWaiting] = useState<{ problem: ServiceProblem; seconds: number }>();
  useEffect(() => {
    const seconds = problem?.document.retryAfterSeconds ?? 0;
    if (!problem || seconds === 0) return;
    const end = Date.now() + seconds * 1000;
    const tell = () => setWaiting({ problem, seconds: Math.max(0, Math.ceil((end - Date.now()) / 1000)) });
    tell();
    const ticking = setInterval(tell, 250);
    return () => clearInterval(ticking);
  }, [problem]);
  return waiting && waiting.problem === problem ? waiting.seconds : 0;
}
