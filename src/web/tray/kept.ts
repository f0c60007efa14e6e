import { useCallback, useState } from 'react';

/**
 * What was begun on a page and must outlive it: when signing in takes the page's place, it is there again afterwards. It
 * stays in the memory of this window only, since some of it is personal; signing out loads the window anew.
 */
const kept = new Map<string, unknown>();

/** As `useState`. @param key says whose it is and what, so that the next person at a shared tablet finds none of it */
export function useKept<Value>(
  key: string,
  initial: Value,
): [Value, (change: (before: Value) => Value) => void] {
  const [value, setValue] = useState<Value>(() => (kept.has(key) ? (kept.get(key) as Value) : initial));
  const change = useCallback(
    (next: (before: Value) => Value) => {
      setValue((before) => {
        const after = next(before);
        kept.set(key, after);
        return after;
      });
    },
    [key],
  );
  return [value, change];
}

/** It is over, and begins anew the next time. */
export function forget(key: string): void {
  kept.delete(key);
}
