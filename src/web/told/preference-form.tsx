import type { AlertPreferenceView } from '../../alerts/preferences/alert-preferences.views.js';
import { Choice } from '../frame/choice.js';
import { useEdits } from '../frame/use-edits.js';
import { ChangeForm } from '../settings/change-form.js';
import { noteOf } from '../settings/note-of-field.js';
import { TextField } from '../settings/text-field.js';
import { useTexts } from '../texts/texts.js';
import { KindsField } from './kinds-field.js';
import { chosenBy, draftOf, kindsOf, writtenKinds } from './preference-draft.js';
import { setOwnPreference } from './told.requests.js';

/** Chooses what is sent to oneself, and when. */
export function PreferenceForm({
  studioId,
  preference,
  morning,
  reload,
}: {
  studioId: string;
  preference: AlertPreferenceView;
  /** When the studio's morning is, `HH:MM`; empty until it is known. */
  morning: string;
  reload: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.told;
  const { version } = preference;
  const edits = useEdits(draftOf(preference));
  const { draft } = edits;
  const choicesOf = <Value extends string>(named: Record<Value, string>) =>
    (Object.keys(named) as Value[]).map((value) => ({ value, label: named[value] }));
  return (
    <ChangeForm
      label={words.what}
      edits={edits}
      version={version ?? 0}
      save={(id) => setOwnPreference(studioId, id, chosenBy(draft, version))}
      reload={reload}
    >
      {(problem) => (
        <>
          <Choice
            label={words.toldFrom}
            description={words.toldFromHint}
            value={draft.toldFrom}
            error={noteOf(texts, edits, 'toldFrom', problem)}
            choices={choicesOf(words.toldFroms)}
            onChange={(toldFrom) => toldFrom !== '' && edits.set({ toldFrom })}
          />
          {draft.toldFrom !== 'never' && (
            <Choice
              label={words.urgentTurn}
              description={words.urgentTurnHint}
              value={draft.urgentTurn}
              error={noteOf(texts, edits, 'urgentTurn', problem)}
              choices={choicesOf(words.urgentTurns)}
              onChange={(urgentTurn) => urgentTurn !== '' && edits.set({ urgentTurn })}
            />
          )}
          <Choice
            label={words.summary}
            description={words.summaryHint}
            value={draft.summary}
            error={noteOf(texts, edits, 'summary', problem)}
            choices={choicesOf(words.summaries)}
            onChange={(summary) => summary !== '' && edits.set({ summary })}
          />
          {draft.summary === 'daily' && (
            <TextField
              edits={edits}
              field="summaryAt"
              problem={problem}
              label={words.summaryAt}
              description={words.summaryAtHint(morning)}
              type="time"
            />
          )}
          <TextField
            edits={edits}
            field="quietFrom"
            problem={problem}
            label={words.quietFrom}
            description={words.quietHint}
            type="time"
          />
          <TextField
            edits={edits}
            field="quietUntil"
            problem={problem}
            label={words.quietUntil}
            type="time"
          />
          <KindsField
            kinds={kindsOf(draft.kindsLeftOut)}
            error={noteOf(texts, edits, 'kindsLeftOut', problem)}
            onChange={(kinds) => edits.set({ kindsLeftOut: writtenKinds(kinds) })}
          />
        </>
      )}
    </ChangeForm>
  );
}
