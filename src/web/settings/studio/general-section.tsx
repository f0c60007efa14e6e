import { Select } from '@mantine/core';
import { useMemo } from 'react';
import type { StudioView } from '../../../identity/studios.views.js';
import { Section } from '../../frame/section.js';
import { useEdits } from '../../frame/use-edits.js';
import { useSignedIn } from '../../sign-in/requester.js';
import { timeZones } from '../../sign-in/time-zones.js';
import { useTexts } from '../../texts/texts.js';
import { ChangeForm } from '../change-form.js';
import { noteOf } from '../note-of-field.js';
import { changeStudio } from '../settings.requests.js';
import { TextField } from '../text-field.js';
import { currencies } from './currencies.js';

/** Its name, how it is reached, its clock and its money. */
export function GeneralSection({ studio, reload }: { studio: StudioView; reload: () => Promise<void> }) {
  const texts = useTexts();
  const words = texts.studioSettings;
  const { refresh } = useSignedIn();
  const { name, timeZone, currency, version } = studio;
  const edits = useEdits({ name, contactPoint: studio.contactPoint ?? '', timeZone, currency });
  const zones = useMemo(() => [...new Set([timeZone, ...timeZones()])].sort(), [timeZone]);
  const money = useMemo(() => currencies(texts.language, currency), [texts.language, currency]);
  return (
    <Section title={words.general} hint={words.generalHint}>
      <ChangeForm
        label={words.general}
        edits={edits}
        version={version}
        save={async (id) => {
          const { contactPoint, ...others } = edits.changes;
          await changeStudio(studio.id, {
            ...{ id, version, ...others },
            ...(contactPoint !== undefined && { contactPoint: contactPoint.trim() || null }),
          });
          // The name stands above every page.
          if (edits.changes.name !== undefined) await refresh();
        }}
        reload={reload}
      >
        {(problem) => (
          <>
            <TextField
              edits={edits}
              field="name"
              problem={problem}
              label={words.name}
              required
              maxLength={100}
            />
            <TextField
              edits={edits}
              field="contactPoint"
              problem={problem}
              label={words.contactPoint}
              description={words.contactPointHint}
              maxLength={300}
            />
            <Select
              label={words.timeZone}
              description={words.timeZoneHint}
              required
              searchable
              allowDeselect={false}
              data={zones}
              value={edits.draft.timeZone}
              error={noteOf(texts, edits, 'timeZone', problem)}
              onChange={(zone) => zone !== null && edits.set({ timeZone: zone })}
            />
            <Select
              label={words.currency}
              required
              searchable
              allowDeselect={false}
              data={money}
              value={edits.draft.currency}
              error={noteOf(texts, edits, 'currency', problem)}
              onChange={(code) => code !== null && edits.set({ currency: code })}
            />
          </>
        )}
      </ChangeForm>
    </Section>
  );
}
