import { TextInput } from '@mantine/core';
import { useEffect, useRef } from 'react';
import type { Outcome } from '../../../sessions/completion-rules.js';
import type { TrayLineView } from '../../../sessions/tray.views.js';
import { Note } from '../../frame/note.js';
import { refusedSinceText } from '../../texts/reason-text.js';
import { useTexts } from '../../texts/texts.js';
import { AmountStepper } from './amount-stepper.js';
import styles from './completion.module.css';
import { OutcomeChoice } from './outcome-choice.js';
import { isHeld } from './prefilled-outcome.js';

/** As many as the service takes. */
const mostDrops = 500;
const longestReason = 500;

/** One thing that lay on the tray, and what became of it. */
export function CompletedLine({
  line,
  outcome,
  mixed,
  drops,
  reason,
  wrapperShown,
  isCalled,
  fault,
  onOutcome,
  onDrops,
  onReason,
}: {
  line: TrayLineView;
  outcome: Outcome | null;
  /** How much of it is in which mixes, in words; empty: it is in none. */
  mixed: readonly string[];
  drops: number;
  reason: string;
  wrapperShown: boolean;
  /** Whether its wrapper was the one shown last: it comes into sight. */
  isCalled: boolean;
  /** Why the service would not take what was said of it. */
  fault: string | undefined;
  onOutcome: (outcome: Outcome) => void;
  onDrops: (drops: number) => void;
  onReason: (reason: string) => void;
}) {
  const texts = useTexts();
  const place = useRef<HTMLFieldSetElement>(null);
  useEffect(() => {
    if (isCalled) place.current?.scrollIntoView({ block: 'center' });
  }, [isCalled]);
  const held = isHeld(line);
  const isLooseBottle = line.stockForm === 'container' && line.isPigment && mixed.length === 0;
  return (
    <fieldset className={styles.line} ref={place} data-called={isCalled || undefined}>
      <legend className={styles.name}>
        {line.label}, {texts.tray.lot(line.lotCode ?? line.labelCode)}
      </legend>
      {wrapperShown && <p className={styles.shown}>{texts.completion.wrapperShown}</p>}
      {mixed.map((amount) => (
        <p key={amount} className={styles.fact}>
          {amount}
        </p>
      ))}
      {held && (
        <Note kind="fault">
          {line.refusedNow.map((reason) => (
            <p key={reason.code}>{refusedSinceText(texts, reason)}</p>
          ))}
          <p>
            <strong>{texts.completion.heldQuestion}</strong>
          </p>
        </Note>
      )}
      <OutcomeChoice
        name={line.id}
        value={outcome}
        excluded={mixed.length > 0 ? 'back unopened' : undefined}
        onChange={onOutcome}
      />
      {outcome === 'used' && isLooseBottle && (
        <AmountStepper
          label={texts.completion.dropsOutside(line.label)}
          written={drops === 0 ? texts.completion.dropsUnknown : texts.tray.drops(drops, String(drops))}
          amount={drops}
          least={0}
          most={mostDrops}
          lessLabel={texts.tray.dropBackOf(line.label)}
          moreLabel={texts.tray.dropMoreOf(line.label)}
          onChange={onDrops}
        />
      )}
      {outcome === 'used' && held && (
        <TextInput
          label={texts.completion.reason}
          description={texts.completion.reasonHint}
          maxLength={longestReason}
          autoComplete="off"
          value={reason}
          onChange={(event) => onReason(event.currentTarget.value)}
        />
      )}
      {fault !== undefined && (
        <Note kind="fault">
          <p>{fault}</p>
        </Note>
      )}
    </fieldset>
  );
}
