import { Title } from '@mantine/core';
import { type ReactNode, useEffect, useRef } from 'react';
import { useTexts } from '../texts/texts.js';
import styles from './page.module.css';

/** A page for whoever is signed in. Its heading is focused when it opens, so that a screen reader says where one is. */
export function Page({
  above,
  title,
  lead,
  children,
}: {
  /** What the page is about, such as the studio. */
  above?: string | undefined;
  title: string;
  lead?: string;
  children?: ReactNode;
}) {
  const texts = useTexts();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${title} – ${texts.app.name}`;
    heading.current?.focus({ preventScroll: true });
  }, [title, texts]);
  return (
    <>
      <header className={styles.head}>
        {above !== undefined && <p className={styles.above}>{above}</p>}
        <Title order={1} ref={heading} tabIndex={-1}>
          {title}
        </Title>
        {lead !== undefined && <p className={styles.lead}>{lead}</p>}
      </header>
      {children}
    </>
  );
}
