import { MOST_TOUCH_UP_DAYS } from '../../../sessions/touch-up-window.js';
import { bodyPlaces } from '../../../sessions/vocabulary.js';
import { Choice } from '../../frame/choice.js';
import type { Edits } from '../../frame/use-edits.js';
import type { ServiceProblem } from '../../service/problem.js';
import { useTexts } from '../../texts/texts.js';
import { noteOf } from '../note-of-field.js';
import { DaysField, TextField } from '../text-field.js';
import type { ProcedureDraft } from './procedure-draft.js';
import styles from './procedures.module.css';

/** Name, place on the body and the days of the touch-up. */
export function ProcedureFields({
  edits,
  problem,
}: {
  edits: Edits<ProcedureDraft>;
  problem: ServiceProblem | undefined;
}) {
  const texts = useTexts();
  const words = texts.procedures;
  const exists = problem?.detailOf('already-exists');
  const days = { min: 0, max: MOST_TOUCH_UP_DAYS, edits, problem };
  return (
    <>
      <TextField
        edits={edits}
        field="name"
        problem={problem}
        label={words.name}
        required
        maxLength={100}
        {...(exists !== undefined && { error: exists })}
      />
      <Choice
        label={words.bodyPlace}
        value={edits.draft.bodyPlace}
        error={noteOf(texts, edits, 'bodyPlace', problem)}
        choices={bodyPlaces.map((value) => ({ value, label: texts.records.bodyPlaces[value] }))}
        onChange={(bodyPlace) => bodyPlace !== '' && edits.set({ bodyPlace })}
      />
      <fieldset className={styles.window}>
        <legend>{words.window}</legend>
        <p>{words.windowHint}</p>
        <div className={styles.days}>
          <DaysField {...days} field="touchUpFromDays" label={words.from} />
          <DaysField {...days} field="touchUpToDays" label={words.to} />
        </div>
      </fieldset>
    </>
  );
}
