import { Textarea, TextInput } from '@mantine/core';
import { useTexts } from '../../texts/texts.js';
import styles from './opening.module.css';
import type { SaidFields } from './taken-notice.js';

/** What the notice says beside its lots. */
export function SaidFieldsPart({
  said,
  faultOf,
  onChanged,
}: {
  said: SaidFields;
  faultOf: (field: string) => string | undefined;
  onChanged: (change: Partial<SaidFields>) => void;
}) {
  const words = useTexts().saidOfRecall;
  const line = (field: 'issuer' | 'reference' | 'classification', longest: number) => (
    <TextInput
      label={words[field]}
      maxLength={longest}
      autoComplete="off"
      value={said[field]}
      error={faultOf(field)}
      onChange={(event) => onChanged({ [field]: event.currentTarget.value })}
    />
  );
  const lines = (field: 'risk' | 'remedy', hint: string) => (
    <Textarea
      label={words[field]}
      description={hint}
      maxLength={5_000}
      autosize
      minRows={2}
      maxRows={8}
      autoComplete="off"
      value={said[field]}
      error={faultOf(field)}
      onChange={(event) => onChanged({ [field]: event.currentTarget.value })}
    />
  );
  return (
    <>
      <div className={styles.pair}>
        {line('issuer', 300)}
        {line('reference', 200)}
      </div>
      <div className={styles.pair}>
        <TextInput
          type="date"
          label={words.issuedOn}
          value={said.issuedOn}
          error={faultOf('issuedOn')}
          onChange={(event) => onChanged({ issuedOn: event.currentTarget.value })}
        />
        {line('classification', 100)}
      </div>
      {lines('risk', words.riskHint)}
      {lines('remedy', words.remedyHint)}
    </>
  );
}
