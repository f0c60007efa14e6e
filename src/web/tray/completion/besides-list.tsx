import { Button } from '@mantine/core';
import { useTexts } from '../../texts/texts.js';
import { AmountStepper } from './amount-stepper.js';
import styles from './completion.module.css';
import type { Besides } from './completion-draft.js';

/** As many as the service takes. */
const mostPieces = 100;
const mostDrops = 500;

/** What was used though it never lay on the tray. */
export function BesidesList({
  besides,
  onChange,
}: {
  besides: readonly Besides[];
  onChange: (besides: Besides[]) => void;
}) {
  const texts = useTexts();
  const change = (containerId: string, amount: number) =>
    onChange(besides.map((each) => (each.containerId === containerId ? { ...each, amount } : each)));
  return (
    <>
      {besides.map(({ containerId, label, lotCode, isCounted, amount }) => (
        <fieldset key={containerId} className={styles.line}>
          <legend className={styles.name}>
            {label}
            {lotCode !== null && `, ${texts.tray.lot(lotCode)}`}
          </legend>
          <p className={styles.fact}>{texts.completion.besidesFact}</p>
          <div className={styles.besides}>
            <AmountStepper
              label={texts.completion.amountOf(label)}
              written={
                isCounted
                  ? texts.tray.pieces(amount)
                  : amount === 0
                    ? texts.completion.dropsUnknown
                    : texts.tray.drops(amount, String(amount))
              }
              amount={amount}
              least={isCounted ? 1 : 0}
              most={isCounted ? mostPieces : mostDrops}
              lessLabel={texts.completion.lessOf(label)}
              moreLabel={texts.completion.moreOf(label)}
              onChange={(next) => change(containerId, next)}
            />
            <Button
              size="xl"
              variant="default"
              aria-label={texts.completion.removeOf(label)}
              onClick={() => onChange(besides.filter((each) => each.containerId !== containerId))}
            >
              {texts.completion.remove}
            </Button>
          </div>
        </fieldset>
      ))}
    </>
  );
}
