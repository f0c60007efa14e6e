import { Button } from '@mantine/core';
import { Link } from 'react-router';
import type { KitGapView } from '../../sessions/tray.views.js';
import { pathOf } from '../frame/places.js';
import { useTexts } from '../texts/texts.js';
import styles from './tray-page.module.css';

/** So many are named; more would hide the tray. */
const mostNamed = 4;

/** What the kit lacks and the way to finish, in sight wherever the page is scrolled to. */
export function TrayBar({
  studioId,
  sessionId,
  lacking,
}: {
  studioId: string;
  sessionId: string;
  lacking: readonly KitGapView[];
}) {
  const texts = useTexts();
  const named = lacking
    .slice(0, mostNamed)
    .map(({ label, quantityPieces }) => texts.tray.gap(quantityPieces, label));
  const unnamed = lacking.length - named.length;
  return (
    <div className={styles.bar}>
      <p className={styles.lacking} role="status">
        {lacking.length === 0 ? (
          texts.tray.nothingLacking
        ) : (
          <>
            <strong>{texts.tray.lacking}</strong> {named.join(' · ')}
            {unnamed > 0 && ` · ${texts.tray.moreLacking(unnamed)}`}
          </>
        )}
      </p>
      <Button
        component={Link}
        className={styles.way}
        to={pathOf({ studioId, area: 'today' }, 'trays', sessionId, 'completion')}
        size="xl"
        variant="default"
      >
        {texts.tray.finish}
      </Button>
    </div>
  );
}
