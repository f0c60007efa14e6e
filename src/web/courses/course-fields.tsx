import { Choice } from '../frame/choice.js';
import type { Edits } from '../frame/use-edits.js';
import type { ServiceProblem } from '../service/problem.js';
import { useProcedures } from '../service/studio-answers.js';
import { noteOf } from '../settings/note-of-field.js';
import { TextField } from '../settings/text-field.js';
import { useTexts } from '../texts/texts.js';
import type { CourseDraft } from './course-draft.js';

/** What is taught, when and to how many. */
export function CourseFields({
  studioId,
  edits,
  present,
  problem,
}: {
  studioId: string;
  edits: Edits<CourseDraft>;
  /** The procedure it has by now, which may be no longer offered. */
  present?: { procedureId: string; procedureName: string };
  problem: ServiceProblem | undefined;
}) {
  const texts = useTexts();
  const words = texts.courses;
  const { answer = [] } = useProcedures(studioId);
  const choices = answer.map(({ id, name }) => ({ value: id, label: name }));
  if (present && !choices.some(({ value }) => value === present.procedureId)) {
    choices.unshift({ value: present.procedureId, label: present.procedureName });
  }
  const theirs = edits.meanwhile('procedureId');
  return (
    <>
      <Choice
        label={words.procedure}
        description={words.procedureHint}
        value={edits.draft.procedureId}
        required
        none={words.choose}
        choices={choices}
        error={
          theirs === undefined
            ? noteOf(texts, edits, 'procedureId', problem)
            : texts.settings.meanwhile(choices.find(({ value }) => value === theirs)?.label ?? '')
        }
        onChange={(procedureId) => edits.set({ procedureId })}
      />
      <TextField
        edits={edits}
        field="heldOn"
        problem={problem}
        type="date"
        label={words.heldOn}
        description={words.heldOnHint}
        required
      />
      <TextField
        edits={edits}
        field="trainees"
        problem={problem}
        type="number"
        inputMode="numeric"
        min={1}
        max={500}
        step={1}
        label={words.trainees}
        description={words.traineesHint}
        required
      />
      <TextField
        edits={edits}
        field="reference"
        problem={problem}
        label={words.reference}
        description={words.referenceHint}
        maxLength={100}
      />
    </>
  );
}
