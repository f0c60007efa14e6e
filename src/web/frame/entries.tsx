import type { ReactNode } from 'react';
import styles from './entries.module.css';

/** A list whose entries are ruled off from each other, as in a book. */
export function Entries({ label, children }: { label: string; children: ReactNode }) {
  return (
    <ul className={styles.entries} aria-label={label}>
      {children}
    </ul>
  );
}

/** One entry: what it is, what is to be known of it, and what can be done with it. */
export function Entry({
  name,
  mark,
  actions,
  isOver = false,
  below,
  children,
}: {
  name: ReactNode;
  /** One word that sets it apart. */
  mark?: string | undefined;
  actions?: ReactNode;
  /** Whether it is only history. */
  isOver?: boolean;
  /** What takes the whole width, such as a form to change it. */
  below?: ReactNode;
  children?: ReactNode;
}) {
  return (
    <li className={styles.entry} data-over={isOver || undefined}>
      <div className={styles.facts}>
        <div className={styles.name}>
          {name}
          {mark !== undefined && <span className={styles.mark}>{mark}</span>}
        </div>
        <div className={styles.more}>{children}</div>
      </div>
      {actions !== undefined && <div className={styles.actions}>{actions}</div>}
      {below !== undefined && <div className={styles.below}>{below}</div>}
    </li>
  );
}
