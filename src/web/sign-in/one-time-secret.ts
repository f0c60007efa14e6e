import { useSyncExternalStore } from 'react';

let secret = '';
const listeners = new Set<() => void>();

/** The secret behind the # of this page's address, if it is a page for one; it is taken out of the address bar. */
function take(): void {
  const { hash, pathname } = window.location;
  if (hash.length < 2 || !['/set-up', '/invitation'].includes(pathname)) return;
  secret = hash.slice(1);
  window.history.replaceState(null, '', pathname);
  for (const listener of listeners) listener();
}

/**
 * Takes the secret of a one-time link out of the address, now and whenever another link is opened in this window. It is
 * kept in memory only: not in the address, the history or the browser's storage.
 */
export function watchOneTimeSecret(): void {
  take();
  window.addEventListener('hashchange', take);
}

/** Forgets the secret, once it was used. */
export function forgetOneTimeSecret(): void {
  secret = '';
}

/** The secret of the link that was opened; empty when there is none. */
export function useOneTimeSecret(): string {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => secret,
  );
}
