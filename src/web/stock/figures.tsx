import type { ReactNode } from 'react';
import styles from './figures.module.css';

export interface Figure {
  name: string;
  value: ReactNode;
  /** The one that is looked for first. */
  isMain?: boolean;
}

/** Numbers beside each other, each with its name. */
export function Figures({ figures }: { figures: readonly Figure[] }) {
  return (
    <dl className={styles.figures}>
      {figures.map(({ name, value, isMain = false }) => (
        <div key={name} className={styles.figure} data-main={isMain || undefined}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
