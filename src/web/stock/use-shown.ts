import { useState } from 'react';

const shownAtOnce = 25;

/** A part of a long list that is here already: the first of it, and more of it when asked. */
export function useShown<Item>(items: readonly Item[]): {
  shown: readonly Item[];
  hasMore: boolean;
  isAsking: boolean;
  more(): void;
} {
  const [most, setMost] = useState(shownAtOnce);
  return {
    shown: items.slice(0, most),
    hasMore: items.length > most,
    isAsking: false,
    more: () => setMost(most + shownAtOnce),
  };
}
