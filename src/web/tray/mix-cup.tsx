import { Button } from '@mantine/core';
import { Note } from '../frame/note.js';
import { refusedSinceText } from '../texts/reason-text.js';
import { useTexts } from '../texts/texts.js';
import type { LaidThing } from './laid-things.js';
import styles from './mixes-panel.module.css';
import { type ShownMix, totalOf } from './shown-mixes.js';
import { writtenAmount } from './written-amounts.js';

/** One cup: of each bottle on the tray how much is in it, with a drop more or less at one press. */
export function MixCup({
  mix,
  bottles,
  warning,
  works,
  onDrop,
}: {
  mix: ShownMix;
  bottles: readonly LaidThing[];
  warning: { containerId: string; messages: string[] } | undefined;
  works: boolean;
  onDrop: (containerId: string, drops: number) => void;
}) {
  const texts = useTexts();
  const total = writtenAmount(totalOf(mix), texts);
  return (
    <section aria-label={mix.label}>
      <ul className={styles.bottles} aria-label={texts.tray.bottlesOf(mix.label)}>
        {bottles.map(({ containerId, label, lotCode, labelCode, refusedNow }) => {
          const part = mix.parts.find((each) => each.containerId === containerId);
          const messages =
            warning?.containerId === containerId
              ? warning.messages
              : refusedNow.map((reason) => refusedSinceText(texts, reason));
          return (
            <li key={containerId} className={styles.bottle}>
              <div className={styles.what}>
                <p className={styles.name}>{label}</p>
                <p className={styles.lot}>{texts.tray.lot(lotCode ?? labelCode)}</p>
                <p className={styles.amount} aria-live="polite">
                  {writtenAmount(part ?? { drops: 0, microlitres: null }, texts)}
                </p>
              </div>
              {works && (
                <div className={styles.presses}>
                  <Button
                    className={styles.less}
                    size="xl"
                    variant="default"
                    px="md"
                    disabled={(part?.drops ?? 0) < 1}
                    aria-label={texts.tray.dropBackOf(label)}
                    onClick={() => onDrop(containerId, -1)}
                  >
                    {texts.tray.dropBack}
                  </Button>
                  <Button
                    className={styles.more}
                    size="xl"
                    px="md"
                    aria-label={texts.tray.dropMoreOf(label)}
                    onClick={() => onDrop(containerId, 1)}
                  >
                    {texts.tray.dropMore}
                  </Button>
                </div>
              )}
              {messages.length > 0 && (
                <div className={styles.warning}>
                  <Note kind="fault">
                    {messages.map((message) => (
                      <p key={message}>{message}</p>
                    ))}
                  </Note>
                </div>
              )}
            </li>
          );
        })}
      </ul>
      {mix.parts.length > 0 && total !== '' && (
        <p className={styles.total}>{texts.tray.totalOf(mix.label, total)}</p>
      )}
    </section>
  );
}
