import { Button } from '@mantine/core';
import styles from './completion.module.css';

/** An amount, one more or less at a press. */
export function AmountStepper({
  label,
  written,
  amount,
  least,
  most,
  lessLabel,
  moreLabel,
  onChange,
}: {
  label: string;
  /** The amount in words. */
  written: string;
  amount: number;
  least: number;
  most: number;
  lessLabel: string;
  moreLabel: string;
  onChange: (amount: number) => void;
}) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: it stands in a fieldset of its own already.
    <div className={styles.stepper} role="group" aria-label={label}>
      <Button
        size="xl"
        variant="default"
        aria-label={lessLabel}
        disabled={amount <= least}
        onClick={() => onChange(amount - 1)}
      >
        −1
      </Button>
      <span className={styles.amount} aria-live="polite">
        {written}
      </span>
      <Button
        size="xl"
        variant="default"
        aria-label={moreLabel}
        disabled={amount >= most}
        onClick={() => onChange(amount + 1)}
      >
        +1
      </Button>
    </div>
  );
}
