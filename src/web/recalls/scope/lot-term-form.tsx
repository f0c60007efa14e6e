import { Textarea, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { LotTerm } from '../../../stock/lot-matching/lot-scope.js';
import { Choice } from '../../frame/choice.js';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { useTexts } from '../../texts/texts.js';
import { useOpenForm } from './open-forms.js';
import styles from './scope.module.css';
import { emptyTerm, type TypedTerm, termsOf, typedOf } from './term-draft.js';

const kinds = ['code', 'code range', 'use-by', 'manufactured', 'all lots'] as const;
const longestCode = 100;

/** Names lots: new ones, or others in the place of one. */
export function LotTermForm({
  label,
  term,
  onSettled,
  onCancel,
}: {
  label: string;
  /** The one that is changed; left out: new ones are added. */
  term?: LotTerm;
  onSettled: (terms: LotTerm[]) => void;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const words = texts.scope;
  useOpenForm();
  const [typed, setTyped] = useState<TypedTerm>(term === undefined ? emptyTerm : typedOf(term));
  const change = (changes: Partial<TypedTerm>) => setTyped({ ...typed, ...changes });
  const settle = () => {
    const terms = termsOf(typed);
    if (terms.length > 0) onSettled(terms);
  };
  const [begunWithDays] = useState(typed.firstDay !== '' || typed.lastDay !== '');
  const { kind } = typed;
  const isOfDates = kind === 'use-by' || kind === 'manufactured';
  const code = (field: 'from' | 'through', name: string) => (
    <TextInput
      label={name}
      description={words.codeHint}
      required
      maxLength={longestCode}
      autoComplete="off"
      autoCapitalize="off"
      spellCheck={false}
      value={typed[field]}
      onChange={(event) => change({ [field]: event.currentTarget.value })}
    />
  );
  const days = (
    <div className={styles.pair}>
      <TextInput
        type="date"
        label={words.firstDay}
        value={typed.firstDay}
        {...(isOfDates && typed.lastDay === '' && { required: true })}
        onChange={(event) => change({ firstDay: event.currentTarget.value })}
      />
      <TextInput
        type="date"
        label={words.lastDay}
        value={typed.lastDay}
        {...(typed.firstDay !== '' && { min: typed.firstDay })}
        onChange={(event) => change({ lastDay: event.currentTarget.value })}
      />
    </div>
  );
  return (
    <div className={styles.form}>
      <Fields onSubmit={settle} label={label}>
        <Choice
          label={words.termKind}
          value={kind}
          choices={kinds.map((one) => ({ value: one, label: words.termKinds[one] }))}
          onChange={(value) => value !== '' && change({ kind: value })}
        />
        {kind === 'code' && term === undefined && (
          <Textarea
            label={words.codes}
            description={words.codesHint}
            required
            autosize
            minRows={3}
            maxRows={12}
            autoComplete="off"
            spellCheck={false}
            value={typed.codes}
            onChange={(event) => change({ codes: event.currentTarget.value })}
          />
        )}
        {kind === 'code' && term !== undefined && (
          <TextInput
            label={words.code}
            description={words.codeHint}
            required
            maxLength={longestCode}
            autoComplete="off"
            autoCapitalize="off"
            spellCheck={false}
            value={typed.codes}
            onChange={(event) => change({ codes: event.currentTarget.value })}
          />
        )}
        {kind === 'code range' && (
          <div className={styles.pair}>
            {code('from', words.firstCode)}
            {code('through', words.lastCode)}
          </div>
        )}
        {isOfDates && (
          <div>
            <p className={styles.hint}>{words.spanHint}</p>
            {days}
          </div>
        )}
        {(kind === 'code' || kind === 'code range') && (
          <details open={begunWithDays}>
            <summary className={styles.summary}>{words.useByBeside}</summary>
            <p className={styles.hint}>{words.useByBesideHint}</p>
            {days}
          </details>
        )}
        <SaveOrCancel
          problem={undefined}
          busy={false}
          save={term === undefined ? words.add : texts.app.save}
          onCancel={onCancel}
        />
      </Fields>
    </div>
  );
}
