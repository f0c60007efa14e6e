const longestWaitMilliseconds = 10_000;

/**
 * Whether the service tells this page by itself what happens to alerts: opens the stream that pages listen to, and waits
 * for its first event. What lies between may hold it back.
 */
export function tellsLive(studioId: string): Promise<boolean> {
  return new Promise((resolve) => {
    const source = new EventSource(`/api/v1/studios/${studioId}/alerts/live`);
    const end = (answers: boolean) => {
      clearTimeout(limit);
      source.close();
      resolve(answers);
    };
    const limit = setTimeout(() => end(false), longestWaitMilliseconds);
    source.addEventListener('connected', () => end(true));
    source.addEventListener('error', () => end(false));
  });
}
