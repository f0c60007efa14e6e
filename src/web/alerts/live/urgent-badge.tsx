import { VisuallyHidden } from '@mantine/core';
import { useTexts } from '../../texts/texts.js';
import { urgentCount, useUrgentAlerts } from './urgent-alerts.js';
import styles from './urgent-badge.module.css';

/** Beside the word of the menu: how many urgent alerts are open. */
export function UrgentBadge({ studioId }: { studioId: string }) {
  const words = useTexts().alertPages;
  const alerts = useUrgentAlerts(studioId);
  if (alerts === undefined || alerts.length === 0) return null;
  const count = urgentCount(alerts);
  return (
    <>
      <span className={styles.badge} aria-hidden="true">
        {count}
      </span>
      <VisuallyHidden component="span">{` (${words.urgentInMenu(count)})`}</VisuallyHidden>
    </>
  );
}
