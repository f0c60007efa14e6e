import { Checkbox } from '@mantine/core';
import type { StudioView } from '../../../identity/studios.views.js';
import { Section } from '../../frame/section.js';
import { useEdits } from '../../frame/use-edits.js';
import { useTexts } from '../../texts/texts.js';
import { ChangeForm } from '../change-form.js';
import { noteOf } from '../note-of-field.js';
import { changeStudio, type StudioChange } from '../settings.requests.js';

/** What is allowed in the studio. */
export function RulesSection({ studio, reload }: { studio: StudioView; reload: () => Promise<void> }) {
  const texts = useTexts();
  const words = texts.studioSettings;
  const { version } = studio;
  const edits = useEdits({
    houseBlends: studio.houseBlends === 'allowed',
    passkeysRequired: studio.passkeysRequired,
  });
  const change = (): Partial<StudioChange> => {
    const { houseBlends, ...others } = edits.changes;
    return { ...others, ...(houseBlends !== undefined && { houseBlends: houseBlends ? 'allowed' : 'off' }) };
  };
  return (
    <Section title={words.rules} hint={words.rulesHint}>
      <ChangeForm
        label={words.rules}
        edits={edits}
        version={version}
        save={(id) => changeStudio(studio.id, { id, version, ...change() })}
        reload={reload}
      >
        {(problem) => (
          <>
            <Checkbox
              label={words.houseBlends}
              description={words.houseBlendsHint}
              checked={edits.draft.houseBlends}
              error={noteOf(texts, edits, 'houseBlends', problem)}
              onChange={(event) => edits.set({ houseBlends: event.currentTarget.checked })}
            />
            <Checkbox
              label={words.passkeysRequired}
              description={words.passkeysRequiredHint}
              checked={edits.draft.passkeysRequired}
              error={noteOf(texts, edits, 'passkeysRequired', problem)}
              onChange={(event) => edits.set({ passkeysRequired: event.currentTarget.checked })}
            />
          </>
        )}
      </ChangeForm>
    </Section>
  );
}
