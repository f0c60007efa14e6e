import { useCallback, useEffect, useState } from 'react';
import type { PushObstacle } from '../alerts/push-obstacles.js';
import { currentPushAddress, pushObstacle } from '../alerts/push-subscription.js';

/** How this browser stands to being told; undefined until it is known. */
export interface ThisBrowser {
  obstacle: PushObstacle | undefined;
  /** SHA-256 of the address it has, in hex, by which it is found among those that are told; null: it has none. */
  fingerprint: string | null;
}

/** @returns how it stands, and how to look again after it was changed */
export function useThisBrowser(): [ThisBrowser | undefined, () => Promise<void>] {
  const [browser, setBrowser] = useState<ThisBrowser>();
  const look = useCallback(async () => {
    const obstacle = await pushObstacle();
    const address = obstacle === undefined ? await currentPushAddress() : undefined;
    setBrowser({ obstacle, fingerprint: address ? await sha256(address.endpoint) : null });
  }, []);
  useEffect(() => void look(), [look]);
  return [browser, look];
}

async function sha256(text: string): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
