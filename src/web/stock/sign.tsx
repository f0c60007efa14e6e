import type { ReactNode } from 'react';
import styles from './sign.module.css';

/** How something stands: all right, to be looked at, not to be used, or over. */
export type Standing = 'good' | 'care' | 'fault' | 'over';

/** One outline for each, so that it is told apart without its colour. */
const outlines: Record<Standing, string> = {
  good: 'M8 1a7 7 0 1 1 0 14a7 7 0 1 1 0-14z',
  care: 'M8 1L15.500 14.500H.5z',
  fault: 'M1.500 1.500H14.500V14.500H1.500z',
  over: 'M1 6.500H15V9.500H1z',
};

/** A shape and a word: how something stands. */
export function Sign({ standing, children }: { standing: Standing; children: ReactNode }) {
  return (
    <span className={styles.sign} data-standing={standing}>
      <svg width="14" height="14" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
        <path d={outlines[standing]} fill="currentColor" />
      </svg>
      {children}
    </span>
  );
}
