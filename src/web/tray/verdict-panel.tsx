import { Button, Group } from '@mantine/core';
import type { ScanView } from '../../sessions/tray.views.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import type { Shown } from './tray.requests.js';
import styles from './verdict-panel.module.css';
import { VerdictSign } from './verdict-sign.js';

/** What the last scan was answered: by word, shape and colour, to be read at arm's length, and what may follow. */
export function VerdictPanel({
  scan,
  symbol,
  openedId,
  busy,
  onShow,
  onOpen,
}: {
  scan: ScanView;
  /** What was scanned, to be shown again as one piece more. */
  symbol: string | undefined;
  openedId: string | undefined;
  busy: boolean;
  onShow: (shown: Shown) => void;
  onOpen: (containerId: string) => void;
}) {
  const texts = useTexts();
  const { verdict, thing, instead, reasons, choices } = scan;
  const offers = scan.offers.filter((offer) => offer !== 'open' || thing?.containerId !== openedId);
  return (
    <div className={styles.verdict} data-verdict={verdict} role="status">
      <div className={styles.head}>
        <VerdictSign verdict={verdict} size={72} />
        <div>
          <p className={styles.word}>{texts.verdicts[verdict]}</p>
          {thing && <p className={styles.thing}>{thing.label}</p>}
          {thing?.lastDay != null && (
            <p>{texts.tray.usableThrough(writtenDay(thing.lastDay, texts.language))}</p>
          )}
        </div>
      </div>
      {reasons.length > 0 && (
        <ul className={styles.reasons}>
          {reasons.map(({ code, message }) => (
            <li key={code}>{message}</li>
          ))}
        </ul>
      )}
      {instead && (
        <p className={styles.instead}>
          {texts.tray.takeInstead(instead.label, instead.lotCode ?? instead.labelCode)}
        </p>
      )}
      {(offers.length > 0 || choices.length > 0) && (
        <Group gap="sm">
          {offers.includes('another') && symbol !== undefined && (
            <Button loading={busy} onClick={() => onShow({ symbol, another: true })}>
              {texts.tray.oneMore}
            </Button>
          )}
          {offers.includes('open') && thing && (
            <Button variant="default" loading={busy} onClick={() => onOpen(thing.containerId)}>
              {texts.tray.openIt}
            </Button>
          )}
          {choices.map((choice) => (
            <Button
              key={choice.containerId}
              variant="default"
              loading={busy}
              onClick={() =>
                onShow({ ...(symbol !== undefined && { symbol }), containerId: choice.containerId })
              }
            >
              {texts.tray.choice(choice.label, choice.labelCode, texts.containerStates[choice.state])}
            </Button>
          ))}
        </Group>
      )}
    </div>
  );
}
