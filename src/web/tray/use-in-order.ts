import { useEffect, useState } from 'react';
import { ServiceProblem } from '../service/problem.js';
import { useAction } from '../service/use-action.js';

/** What waits to be sent; it outlives the page, so that signing in again in the page's place loses none of it. */
const queues = new Map<string, unknown[]>();

function queueOf<Item>(key: string): Item[] {
  const queue = queues.get(key) ?? [];
  queues.set(key, queue);
  return queue as Item[];
}

/**
 * Sends one after the other what was pressed or shown, however fast. Each item brings its own id, so what could not be
 * sent waits and is sent again as the same one; what the service refuses is told, and is over.
 *
 * @param key says whose it is and what: what somebody scanned is never sent in the name of the next
 * @param onSent when nothing waits any more
 */
export function useInOrder<Item extends object>(
  key: string,
  send: (item: Item) => Promise<void>,
  onSent: () => Promise<void>,
) {
  const [waiting, setWaiting] = useState<readonly Item[]>(() => [...queueOf<Item>(key)]);
  const { run, busy, problem } = useAction(async () => {
    const queue = queueOf<Item>(key);
    let refused: unknown;
    do {
      for (let next = queue[0]; next !== undefined; next = queue[0]) {
        try {
          await send(next);
        } catch (error) {
          if (!isRefusal(error)) throw error;
          refused = error;
        }
        // The page that was there before signing in again may have sent the same.
        if (queue[0] === next) queue.shift();
        setWaiting([...queue]);
      }
      await onSent();
    } while (queue.length > 0);
    if (refused !== undefined) throw refused;
  });
  useEffect(() => {
    if (queueOf(key).length > 0) void run();
  }, [key, run]);
  const add = (...items: Item[]) => {
    const queue = queueOf<Item>(key);
    queue.push(...items);
    setWaiting([...queue]);
    void run();
  };
  return { waiting, busy, problem, add, sendAgain: () => void run() };
}

const passing: ReadonlySet<string> = new Set(['unreachable', 'sign-in-needed', 'too-many-requests']);

/** Sent again it would be answered the same. */
function isRefusal(error: unknown): boolean {
  return error instanceof ServiceProblem && error.document.status < 500 && !passing.has(error.code);
}
