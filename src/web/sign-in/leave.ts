import { forgetTheDay } from '../offline/device-store.js';
import { signOut } from './sign-in.requests.js';

const key = 'lotward-leaving';

/**
 * Whether somebody wanted to sign out at this browser, and the service was not told yet. Until then it takes the browser
 * for theirs, and nobody may be shown what is theirs.
 */
export function isLeaving(): boolean {
  try {
    return localStorage.getItem(key) !== null;
  } catch {
    return false;
  }
}

/** Also when somebody signs in anew, which takes the place of what was before. */
export function leavingIsOver(): void {
  try {
    localStorage.removeItem(key);
  } catch {
    // Nothing was kept either.
  }
}

/** Signs out, and forgets the day on this device at once; where the service is not reached it is told later. */
export async function leave(): Promise<void> {
  try {
    localStorage.setItem(key, new Date().toISOString());
  } catch {
    // Where the browser keeps nothing it keeps no day either.
  }
  await forgetTheDay().catch(() => undefined);
  await signOut();
  // What was asked before and answered meanwhile.
  await forgetTheDay().catch(() => undefined);
  leavingIsOver();
}
