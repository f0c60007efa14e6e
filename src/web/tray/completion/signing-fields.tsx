import { NativeSelect, Textarea } from '@mantine/core';
import { treats } from '../../access/treats.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { usePeople } from '../../service/studio-answers.js';
import { useTexts } from '../../texts/texts.js';
import styles from './completion.module.css';
import type { CompletionDraft } from './completion-draft.js';

const longestComplications = 4_000;

/** Whether anything went wrong, and who signs. */
export function SigningFields({
  studioId,
  personId,
  draft,
  onChange,
}: {
  studioId: string;
  personId: string;
  draft: CompletionDraft;
  onChange: (change: Partial<CompletionDraft>) => void;
}) {
  const texts = useTexts();
  const people = usePeople(studioId);
  const artists = (people.answer ?? []).filter((person) => person.id === personId || treats(person));
  return (
    <Section title={texts.completion.signing} hint={texts.completion.signingHint}>
      <div className={styles.signing}>
        <fieldset className={styles.line}>
          <legend className={styles.name}>{texts.completion.complications}</legend>
          <div className={styles.outcomes}>
            {[false, true].map((has) => (
              <label key={String(has)} className={styles.outcome}>
                <input
                  type="radio"
                  name="complications"
                  checked={draft.hasComplications === has}
                  onChange={() => onChange({ hasComplications: has })}
                />
                <span>{has ? texts.completion.some : texts.completion.none}</span>
              </label>
            ))}
          </div>
          {draft.hasComplications && (
            <Textarea
              label={texts.completion.which}
              description={texts.completion.whichHint}
              rows={4}
              maxLength={longestComplications}
              value={draft.complications}
              onChange={(event) => onChange({ complications: event.currentTarget.value })}
            />
          )}
        </fieldset>
        <ProblemNote problem={people.problem} />
        <NativeSelect
          size="xl"
          label={texts.completion.signedBy}
          value={draft.signedBy === '' ? personId : draft.signedBy}
          data={
            artists.length === 0
              ? [{ value: personId, label: texts.completion.me }]
              : artists.map(({ id, name }) => ({ value: id, label: name ?? texts.completion.me }))
          }
          onChange={(event) => onChange({ signedBy: event.currentTarget.value })}
        />
      </div>
    </Section>
  );
}
