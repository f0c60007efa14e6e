import { useEffect, useState } from 'react';
import { useTexts } from '../../texts/texts.js';
import styles from './drills.module.css';
import { writtenDuration } from './written-duration.js';

/** How long something has been going on; it stands still once it is over. */
export function Clock({ from, until }: { from: string; until: string | null }) {
  const words = useTexts().drills;
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (until !== null) return;
    const ticking = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(ticking);
  }, [until]);
  const seconds = ((until === null ? now : Date.parse(until)) - Date.parse(from)) / 1000;
  return (
    <p className={styles.clock} role="timer" aria-label={words.clock} aria-live="off">
      {writtenDuration(seconds)}
    </p>
  );
}
