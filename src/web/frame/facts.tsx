import type { ReactNode } from 'react';
import styles from './facts.module.css';

/** What is known of something, each fact by its name; those without a value are left out. */
export function Facts({ facts }: { facts: readonly (readonly [name: string, value: ReactNode])[] }) {
  return (
    <dl className={styles.facts}>
      {facts.map(([name, value]) =>
        value === null || value === undefined || value === false || value === '' ? null : (
          <div key={name} className={styles.fact}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ),
      )}
    </dl>
  );
}
