import { Button, Group } from '@mantine/core';
import { useEffect, useRef } from 'react';
import type { ScanView } from '../../sessions/tray.views.js';
import type { Texts } from '../texts/en/english.js';
import { reasonText } from '../texts/reason-text.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import type { Shown } from './tray.requests.js';
import styles from './verdict-panel.module.css';
import { VerdictSign } from './verdict-sign.js';

/** What the last scan was answered: by word, shape and colour, to be read at arm's length, and what may follow. */
export function VerdictPanel({
  scan,
  symbol,
  pieces,
  openedId,
  busy,
  onShow,
  onOpen,
  onTakeOff,
}: {
  scan: ScanView;
  /** What was scanned, to be shown again as one piece more. */
  symbol: string | undefined;
  /** How many of it lie on the tray by now. */
  pieces: number;
  openedId: string | undefined;
  busy: boolean;
  onShow: (shown: Shown) => void;
  onOpen: (containerId: string) => void;
  /** Takes back what this scan put on the tray; undefined when it put nothing there, or that is gone again. */
  onTakeOff: (() => void) | undefined;
}) {
  const texts = useTexts();
  const { verdict, thing, instead, reasons, choices } = scan;
  const offers = scan.offers.filter((offer) => offer !== 'open' || thing?.containerId !== openedId);
  const panel = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each verdict is brought into sight.
  useEffect(() => {
    panel.current?.scrollIntoView({ block: 'nearest' });
  }, [scan.id]);
  const date = lastDayOf(scan, texts);
  const words = reasons.flatMap(({ code }) => texts.reasonWords[code] ?? []);
  const [question] = words;
  // A question is its own word: which one, or another one.
  const word = verdict === 'question' && question !== undefined ? question : texts.verdicts[verdict];
  const why = verdict === 'question' ? '' : words.join(' · ');
  return (
    <div className={styles.verdict} data-verdict={verdict} role="status" ref={panel}>
      <div className={styles.head}>
        <VerdictSign verdict={verdict} ground="var(--verdict)" />
        <div className={styles.words}>
          <p className={styles.word}>{word}</p>
          {thing && <p className={styles.thing}>{thing.label}</p>}
          {why !== '' && <p className={styles.why}>{why}</p>}
          {thing && pieces > 0 && <p className={styles.thing}>{texts.tray.onTrayNow(pieces)}</p>}
        </div>
      </div>
      <div className={styles.more}>
        {date !== undefined && <p className={styles.date}>{date}</p>}
        {instead && (
          <p className={styles.instead}>
            {texts.tray.takeInstead(instead.label, instead.lotCode ?? instead.labelCode)}
          </p>
        )}
        {reasons.length > 0 && (
          <ul className={styles.reasons}>
            {reasons.map((reason) => (
              <li key={reason.code}>{reasonText(texts, reason)}</li>
            ))}
          </ul>
        )}
        {(offers.length > 0 || choices.length > 0 || onTakeOff) && (
          <Group gap="sm">
            {offers.includes('another') && symbol !== undefined && (
              <Button size="xl" loading={busy} onClick={() => onShow({ symbol, another: true })}>
                {texts.tray.oneMore}
              </Button>
            )}
            {offers.includes('open') && thing && (
              <Button size="xl" variant="default" loading={busy} onClick={() => onOpen(thing.containerId)}>
                {texts.tray.openIt}
              </Button>
            )}
            {choices.map((choice) => (
              <Button
                key={choice.containerId}
                size="xl"
                variant="default"
                loading={busy}
                onClick={() =>
                  onShow({ ...(symbol !== undefined && { symbol }), containerId: choice.containerId })
                }
              >
                {texts.tray.choice(choice.label, choice.labelCode, texts.containerStates[choice.state])}
              </Button>
            ))}
            {onTakeOff && (
              <Button size="xl" variant="default" loading={busy} onClick={onTakeOff}>
                {texts.tray.takeBack}
              </Button>
            )}
          </Group>
        )}
      </div>
    </div>
  );
}

/** Until when it may be used, or could be and by whose word. */
function lastDayOf({ thing, reasons }: ScanView, texts: Texts): string | undefined {
  if (thing?.lastDay == null) return undefined;
  const day = writtenDay(thing.lastDay, texts.language);
  const codes = reasons.map(({ code }) => code);
  if (codes.includes('open too long'))
    return texts.tray.wasOpenThrough(day, texts.whose[thing.openedLifeFrom]);
  return codes.includes('expired') ? texts.tray.expiredOn(day) : texts.tray.usableThrough(day);
}

/** Where the verdict will stand. */
export function NoVerdict() {
  const texts = useTexts();
  return (
    <div className={styles.none}>
      <p>{texts.tray.nothingShown}</p>
    </div>
  );
}
