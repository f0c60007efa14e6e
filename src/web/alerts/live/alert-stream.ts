import { currentConnection, onConnection } from '../../service/connection.js';
import { waitBeforeRetry } from './wait-before-retry.js';

/** A page that nobody looks at gives its connection back after so long: browsers have few of them for all pages together. */
const hiddenMilliseconds = 10_000;

interface Heard {
  /** Something happened to alerts, or may have while nobody listened. */
  onNews(): void;
  /** The stream was lost; whoever is signed in may be so no longer. */
  onLost(): void;
}

/**
 * Listens to what happens to the alerts of a studio, as long as the page is looked at. It is only told that there is news:
 * what it is, the page asks. Without it, pages ask as they always do when they are looked at.
 * @returns ends it
 */
export function listenToAlerts(studioId: string, { onNews, onLost }: Heard): () => void {
  let source: EventSource | undefined;
  let retrying: ReturnType<typeof setTimeout> | undefined;
  let hiding: ReturnType<typeof setTimeout> | undefined;
  let failures = 0;
  /** The number of the newest step that is known of. */
  let newest: number | undefined;

  const disconnect = () => {
    clearTimeout(retrying);
    source?.close();
    source = undefined;
  };

  const connect = () => {
    disconnect();
    const opened = new EventSource(`/api/v1/studios/${studioId}/alerts/live`);
    source = opened;
    opened.addEventListener('connected', ({ data, lastEventId }: MessageEvent<string>) => {
      failures = 0;
      const before = newest;
      newest = sequenceOf(data) ?? Number(lastEventId);
      if (before !== undefined && before !== newest) onNews();
    });
    opened.addEventListener('alert', ({ data }: MessageEvent<string>) => {
      newest = sequenceOf(data) ?? newest;
      onNews();
    });
    opened.addEventListener('missed', onNews);
    // Its own way of trying again knows no growing wait.
    opened.addEventListener('error', () => {
      // Browsers give up by themselves only what was answered with a refusal.
      const how = opened.readyState === EventSource.CLOSED ? 'refused' : 'lost';
      disconnect();
      failures += 1;
      retrying = setTimeout(connect, waitBeforeRetry(how, failures, Math.random()));
      if (how === 'lost') onLost();
    });
  };

  const onVisibility = () => {
    clearTimeout(hiding);
    if (document.visibilityState === 'hidden') hiding = setTimeout(disconnect, hiddenMilliseconds);
    else if (source === undefined) connect();
  };
  const forgetConnection = onConnection(() => {
    if (currentConnection().isReached && source === undefined && document.visibilityState === 'visible') {
      connect();
    }
  });
  document.addEventListener('visibilitychange', onVisibility);
  if (document.visibilityState === 'visible') connect();

  return () => {
    document.removeEventListener('visibilitychange', onVisibility);
    forgetConnection();
    clearTimeout(hiding);
    disconnect();
  };
}

function sequenceOf(data: string): number | undefined {
  const { sequence } = JSON.parse(data) as { sequence?: number };
  return sequence;
}
