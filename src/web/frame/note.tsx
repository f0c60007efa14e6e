import type { ReactNode } from 'react';
import styles from './note.module.css';

/** Something that is said at once, also by a screen reader. */
export function Note({ kind, children }: { kind: 'fault' | 'good' | 'plain'; children: ReactNode }) {
  return (
    <div className={styles.note} data-kind={kind} role={kind === 'fault' ? 'alert' : 'status'}>
      {children}
    </div>
  );
}
