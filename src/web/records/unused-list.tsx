import { Title } from '@mantine/core';
import type { SessionTrayLineView } from '../../sessions/session-record.views.js';
import { useTexts } from '../texts/texts.js';
import styles from './session-sheet.module.css';

/** What lay on the tray and touched nobody, with what became of it. */
export function UnusedList({ lines, title }: { lines: readonly SessionTrayLineView[]; title: string }) {
  const texts = useTexts();
  const unused = lines.filter(({ settledAs }) => settledAs !== 'used');
  if (unused.length === 0) return null;
  return (
    <section className={styles.part}>
      <Title order={3}>{title}</Title>
      <ul className={styles.lines} aria-label={title}>
        {unused.map((line) => {
          const outcome =
            line.state === 'on tray'
              ? texts.session.outcomes['on tray']
              : line.settledAs === 'opened unused' || line.settledAs === 'back unopened'
                ? texts.session.outcomes[line.settledAs]
                : texts.session.outcomes['taken off'];
          return (
            <li key={line.id}>
              {[
                line.productName,
                `${texts.session.lot} ${line.lotCode ?? texts.session.noLotCode}`,
                line.pieces > 0 && texts.session.pieces(line.pieces),
                outcome,
              ]
                .filter(Boolean)
                .join(', ')}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
