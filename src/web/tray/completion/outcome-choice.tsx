import { type Outcome, outcomes } from '../../../sessions/completion-rules.js';
import { useTexts } from '../../texts/texts.js';
import styles from './completion.module.css';

/** Used, opened unused or back unopened: one large choice. */
export function OutcomeChoice({
  name,
  value,
  excluded,
  onChange,
}: {
  /** Of the group; no two on a page are the same. */
  name: string;
  /** Null: not said yet. */
  value: Outcome | null;
  /** What cannot be said. */
  excluded: Outcome | undefined;
  onChange: (outcome: Outcome) => void;
}) {
  const texts = useTexts();
  return (
    <div className={styles.outcomes}>
      {outcomes.map((outcome) => (
        <label key={outcome} className={styles.outcome} data-outcome={outcome}>
          <input
            type="radio"
            name={name}
            checked={value === outcome}
            disabled={excluded === outcome}
            onChange={() => onChange(outcome)}
          />
          <span>{texts.completion.outcomes[outcome]}</span>
        </label>
      ))}
    </div>
  );
}
