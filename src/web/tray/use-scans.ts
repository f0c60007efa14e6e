import { useRef, useState } from 'react';
import { v7 as uuidv7 } from 'uuid';
import type { ScanView } from '../../sessions/tray.views.js';
import type { Event } from '../service/events.js';
import { ServiceProblem } from '../service/problem.js';
import { useAction } from '../service/use-action.js';
import { type Shown, scan } from './tray.requests.js';

/**
 * What is shown to a tray, one after the other: who scans on while the service still judges loses nothing. What could not
 * be sent waits and is sent again as the same scan; what the service refused to read is told, and is over.
 */
export function useScans(studioId: string, sessionId: string, onJudged: () => Promise<void>) {
  const queue = useRef<(Shown & Event)[]>([]).current;
  const [waiting, setWaiting] = useState(0);
  const [last, setLast] = useState<{ scan: ScanView; symbol: string | undefined }>();
  const { run, busy, problem } = useAction(async () => {
    let refused: unknown;
    do {
      for (let next = queue[0]; next !== undefined; next = queue[0]) {
        try {
          setLast({ scan: await scan(studioId, sessionId, next), symbol: next.symbol });
        } catch (error) {
          if (!isRefusal(error)) throw error;
          refused = error;
        }
        queue.shift();
        setWaiting(queue.length);
      }
      await onJudged();
    } while (queue.length > 0);
    if (refused !== undefined) throw refused;
  });
  const show = (shown: Shown) => {
    queue.push({ id: uuidv7(), occurredAt: new Date().toISOString(), ...shown });
    setWaiting(queue.length);
    void run();
  };
  return { last, waiting, busy, problem, show, sendAgain: () => void run() };
}

const passing: ReadonlySet<string> = new Set(['unreachable', 'sign-in-needed', 'too-many-requests']);

/** Sent again it would be answered the same. */
function isRefusal(error: unknown): boolean {
  return error instanceof ServiceProblem && error.document.status < 500 && !passing.has(error.code);
}
