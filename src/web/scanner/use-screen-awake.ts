import { useEffect } from 'react';

/**
 * Keeps the screen on, for a device on a stand that nobody touches. The system takes it back whenever the page is hidden,
 * so `active` is to follow that.
 */
export function useScreenAwake(active: boolean): void {
  useEffect(() => {
    if (!active || navigator.wakeLock === undefined) return;
    let over = false;
    let lock: WakeLockSentinel | undefined;
    // Refused when the battery is low, for one: then the screen goes off as it always does.
    navigator.wakeLock.request('screen').then(
      (held) => {
        lock = held;
        if (over) void held.release();
      },
      () => undefined,
    );
    return () => {
      over = true;
      void lock?.release();
    };
  }, [active]);
}
