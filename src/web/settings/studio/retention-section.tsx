import type { RetentionChoice } from '../../../identity/retention-presets.js';
import type { RetentionPresetView, StudioView } from '../../../identity/studios.views.js';
import { Choice } from '../../frame/choice.js';
import { Section } from '../../frame/section.js';
import { type Edits, useEdits } from '../../frame/use-edits.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { ChangeForm } from '../change-form.js';
import { noteOf } from '../note-of-field.js';
import { changeStudio, listRetentionPresets } from '../settings.requests.js';
import { TextField } from '../text-field.js';
import styles from './retention-section.module.css';

interface Draft {
  retentionPreset: RetentionChoice | '';
  retentionYears: string;
  retentionLaw: string;
}

/** How long clients' records are kept at least, and by whose rule. */
export function RetentionSection({ studio, reload }: { studio: StudioView; reload: () => Promise<void> }) {
  const texts = useTexts();
  const words = texts.studioSettings;
  const { version, retention } = studio;
  const { answer: presets = [] } = useAnswer(['retention presets', studio.id], () =>
    listRetentionPresets(studio.id),
  );
  const edits = useEdits<Draft>({
    retentionPreset: studio.retentionPreset ?? '',
    retentionYears: studio.retentionYears === null ? '' : String(studio.retentionYears),
    retentionLaw: studio.retentionLaw ?? '',
  });
  const { retentionPreset, retentionYears, retentionLaw } = edits.draft;
  const preset = presets.find(({ id }) => id === retentionPreset);
  const save = (id: string) =>
    changeStudio(studio.id, {
      id,
      version,
      // The three belong together.
      ...(retentionPreset !== '' && { retentionPreset }),
      retentionYears: retentionYears === '' ? null : Number(retentionYears),
      retentionLaw: retentionPreset === 'own' && retentionLaw.trim() !== '' ? retentionLaw.trim() : null,
    });
  return (
    <Section title={words.retention} hint={words.retentionHint}>
      <p className={styles.now}>
        {retention === null ? words.retentionNotChosen : words.retentionNow(retention.years, retention.law)}
      </p>
      <ChangeForm label={words.retention} edits={edits} version={version} save={save} reload={reload}>
        {(problem) => (
          <>
            <PresetChoice
              edits={edits}
              presets={presets}
              error={noteOf(texts, edits, 'retentionPreset', problem)}
            />
            {preset && (
              <p className={styles.source}>
                {words.presetSource(preset.years, preset.source)} {words.howSure[preset.howSure]}
              </p>
            )}
            {retentionPreset !== '' && (
              <TextField
                edits={edits}
                field="retentionYears"
                problem={problem}
                label={words.retentionYears}
                description={retentionPreset === 'own' ? words.yearsOfOwn : words.yearsOfPreset}
                type="number"
                inputMode="numeric"
                min={0}
                max={100}
                step={1}
                required={retentionPreset === 'own'}
              />
            )}
            {retentionPreset === 'own' && (
              <TextField
                edits={edits}
                field="retentionLaw"
                problem={problem}
                label={words.retentionLaw}
                description={words.retentionLawHint}
                maxLength={200}
              />
            )}
          </>
        )}
      </ChangeForm>
    </Section>
  );
}

function PresetChoice({
  edits,
  presets,
  error,
}: {
  edits: Edits<Draft>;
  presets: readonly RetentionPresetView[];
  error: string | undefined;
}) {
  const texts = useTexts();
  const words = texts.studioSettings;
  const { retentionPreset } = edits.draft;
  return (
    <Choice
      label={words.retentionPreset}
      value={retentionPreset}
      error={error}
      choices={[
        ...presets.map(({ id, years }) => ({
          value: id,
          label: words.presetOf(words.presetNames[id], years),
        })),
        { value: 'own', label: words.ownRetention },
      ]}
      {...(retentionPreset === '' && { none: words.noRetention })}
      // The years and the law set before belonged to the rule before.
      onChange={(chosen) => edits.set({ retentionPreset: chosen, retentionYears: '', retentionLaw: '' })}
    />
  );
}
