import { Title } from '@mantine/core';
import { type ReactNode, useEffect } from 'react';
import { DisplayChoices } from '../account/display-choices.js';
import { useTexts } from '../texts/texts.js';
import { Mark } from './mark.js';
import styles from './threshold.module.css';

/** A page that is open to anyone: what is to be done, beside the band that says where one is. */
export function Threshold({ title, lead, children }: { title: string; lead?: string; children: ReactNode }) {
  const texts = useTexts();
  useEffect(() => {
    document.title = `${title} – ${texts.app.name}`;
  }, [title, texts]);
  return (
    <div className={styles.threshold}>
      <header className={styles.band}>
        <div className={styles.name}>
          <Mark size={40} />
          <span>{texts.app.name}</span>
        </div>
        <p className={styles.motto}>{texts.app.motto}</p>
      </header>
      <main className={styles.main}>
        <header className={styles.head}>
          <Title order={1}>{title}</Title>
          {lead !== undefined && <p className={styles.lead}>{lead}</p>}
        </header>
        {children}
        <footer className={styles.foot}>
          <DisplayChoices />
        </footer>
      </main>
    </div>
  );
}
