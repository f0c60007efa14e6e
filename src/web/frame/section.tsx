import { Title } from '@mantine/core';
import { type ReactNode, useId } from 'react';
import styles from './section.module.css';

/** A part of a page: its name and what it is for stand at the left, where there is room. */
export function Section({ title, hint, children }: { title: string; hint?: string; children: ReactNode }) {
  const id = useId();
  return (
    <section className={styles.section} aria-labelledby={id}>
      <div className={styles.about}>
        <Title order={2} id={id}>
          {title}
        </Title>
        {hint !== undefined && <p className={styles.hint}>{hint}</p>}
      </div>
      <div className={styles.content}>{children}</div>
    </section>
  );
}
