import { createContext, use } from 'react';
import type { RequesterView, StandingView } from '../../identity/sign-in/sign-in.views.js';

interface SignedIn {
  requester: RequesterView;
  /** Asks again who is signed in, and what they may do. */
  refresh(): Promise<void>;
}

/** Who is signed in at this browser. */
export const SignedInContext = createContext<SignedIn | undefined>(undefined);

/** Who is signed in, and how to ask again; only on pages that nobody else is shown. */
export function useSignedIn(): SignedIn {
  const signedIn = use(SignedInContext);
  if (!signedIn) throw new Error('This is shown to nobody who is not signed in.');
  return signedIn;
}

export function useRequester(): RequesterView {
  return useSignedIn().requester;
}

/** What whoever is signed in is in a studio; undefined when they have no part in it. */
export function useStanding(studioId: string): StandingView | undefined {
  return useRequester().studios.find((standing) => standing.studioId === studioId);
}
