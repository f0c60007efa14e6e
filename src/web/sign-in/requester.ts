import { createContext, use } from 'react';
import type { RequesterView, StandingView } from '../../identity/sign-in/sign-in.views.js';

/** Who is signed in at this browser. */
export const RequesterContext = createContext<RequesterView | undefined>(undefined);

/** Who is signed in; only on pages that nobody else is shown. */
export function useRequester(): RequesterView {
  const requester = use(RequesterContext);
  if (!requester) throw new Error('This is shown to nobody who is not signed in.');
  return requester;
}

/** What whoever is signed in is in a studio; undefined when they have no part in it. */
export function useStanding(studioId: string): StandingView | undefined {
  return useRequester().studios.find((standing) => standing.studioId === studioId);
}
