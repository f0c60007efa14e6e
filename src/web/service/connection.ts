import { useSyncExternalStore } from 'react';

/** Whether the service answered when it was last asked, and since when it has not. */
export type Connection = { isReached: true } | { isReached: false; since: string };

const lookAgainMilliseconds = 4_000;

let connection: Connection = { isReached: true };
let looking: ReturnType<typeof setTimeout> | undefined;
const listeners = new Set<() => void>();

/** Told after every request: an answer of any kind is a connection. While there is none it is looked for. */
export function tellReached(isReached: boolean): void {
  if (isReached) clearTimeout(looking);
  else lookLater();
  if (isReached === connection.isReached) return;
  connection = isReached ? { isReached } : { isReached, since: new Date().toISOString() };
  for (const listener of listeners) listener();
}

export function currentConnection(): Connection {
  return connection;
}

export function onConnection(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function useConnection(): Connection {
  return useSyncExternalStore(onConnection, currentConnection);
}

function lookLater(): void {
  clearTimeout(looking);
  looking = setTimeout(look, lookAgainMilliseconds);
}

async function look(): Promise<void> {
  try {
    const answer = await fetch('/health/live', {
      cache: 'no-store',
      signal: AbortSignal.timeout(lookAgainMilliseconds),
    });
    // A proxy, or the sign-in of a guests' network, may answer in its place.
    const { status } = (await answer.json()) as { status?: string };
    if (answer.ok && status === 'live') tellReached(true);
    else lookLater();
  } catch {
    lookLater();
  }
}

// A network that is there again says nothing of the service: it is looked for at once.
globalThis.addEventListener?.('online', () => {
  if (!connection.isReached) void look();
});
