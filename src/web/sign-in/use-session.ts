import { useCallback, useEffect, useState } from 'react';
import type { RequesterView } from '../../identity/sign-in/sign-in.views.js';
import { forgetTheDay, keepRequester, keptRequester } from '../offline/device-store.js';
import { currentConnection, onConnection } from '../service/connection.js';
import { isPassing, isProblem, ServiceProblem } from '../service/problem.js';
import { onSignedOut } from '../service/request.js';
import { isLeaving, leave } from './leave.js';
import { askWhoIsSignedIn } from './sign-in.requests.js';

export type Session =
  | { state: 'unknown'; problem?: ServiceProblem }
  /** `again`: somebody was signed in until now. */
  | { state: 'signed out'; again: boolean }
  | { state: 'signed in'; requester: RequesterView };

/**
 * Who is signed in at this browser. Looked at again when a page opens, when the window is looked at again and when
 * the service is reached again, since signing out, roles and last days hold at once and may have been changed elsewhere.
 */
export function useSession(path: string): { session: Session; refresh(): Promise<void> } {
  const [session, setSession] = useState<Session>({ state: 'unknown' });

  const refresh = useCallback(async () => {
    if (isLeaving()) {
      setSession({ state: 'signed out', again: false });
      await leave().catch(() => undefined);
      return;
    }
    try {
      const requester = await askWhoIsSignedIn();
      setSession({ state: 'signed in', requester });
      await keepRequester(requester).catch(() => undefined);
    } catch (error) {
      if (!(error instanceof ServiceProblem)) throw error;
      if (isProblem(error, 'sign-in-needed')) return;
      // Who was signed in is taken to be so still, also by a page that opens without network; what they ask for next will
      // show it.
      const kept = isPassing(error) ? await keptRequester().catch(() => undefined) : undefined;
      setSession((before) => {
        if (before.state === 'signed in') return before;
        return kept ? { state: 'signed in', requester: kept } : { state: 'unknown', problem: error };
      });
    }
  }, []);

  useEffect(
    () =>
      onSignedOut(() => {
        setSession((before) => ({
          state: 'signed out',
          again: before.state === 'signed in' || (before.state === 'signed out' && before.again),
        }));
        forgetTheDay().catch(() => undefined);
      }),
    [],
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: another page is a reason to look again.
  useEffect(() => {
    void refresh();
  }, [refresh, path]);

  useEffect(() => {
    const look = () => {
      if (document.visibilityState === 'visible') void refresh();
    };
    document.addEventListener('visibilitychange', look);
    const forgetLook = onConnection(() => {
      if (currentConnection().isReached) void refresh();
    });
    return () => {
      document.removeEventListener('visibilitychange', look);
      forgetLook();
    };
  }, [refresh]);

  return { session, refresh };
}
