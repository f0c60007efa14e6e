import type { StudioView } from '../../identity/studios.views.js';
import { Choice } from '../frame/choice.js';
import { useEdits } from '../frame/use-edits.js';
import { useTexts } from '../texts/texts.js';
import { type AssumedLife, assumedLifeOf, durationOf, writtenLife } from './assumed-life.js';
import { ChangeForm } from './change-form.js';
import { changeStudio, type StudioChange } from './settings.requests.js';
import { DaysField, TextField } from './text-field.js';

const units = ['months', 'days', 'hours'] as const;

interface Draft {
  useByNearDays: string;
  openedLifeEndingDays: string;
  /** ISO 8601 while it is written, empty for none; amount and unit are one thing. */
  assumedOpenedLife: string;
  morning: string;
}

/** Changes from when on the studio is told. */
export function ThresholdsForm({ studio, reload }: { studio: StudioView; reload: () => Promise<void> }) {
  const texts = useTexts();
  const words = texts.thresholds;
  const { version } = studio;
  const edits = useEdits<Draft>({
    useByNearDays: String(studio.useByNearDays),
    openedLifeEndingDays: String(studio.openedLifeEndingDays),
    assumedOpenedLife: studio.assumedOpenedLife ?? '',
    morning: studio.morning,
  });
  const life = lifeBeingWritten(edits.draft.assumedOpenedLife);
  const setLife = (change: AssumedLife) => edits.set({ assumedOpenedLife: durationOf(change) ?? '' });
  const change = (): Partial<StudioChange> => {
    const { useByNearDays, openedLifeEndingDays, assumedOpenedLife, morning } = edits.changes;
    return {
      ...(useByNearDays !== undefined && { useByNearDays: Number(useByNearDays) }),
      ...(openedLifeEndingDays !== undefined && { openedLifeEndingDays: Number(openedLifeEndingDays) }),
      ...(assumedOpenedLife !== undefined && {
        assumedOpenedLife: assumedOpenedLife === '' ? null : assumedOpenedLife,
      }),
      ...(morning !== undefined && { morning }),
    };
  };
  return (
    <ChangeForm
      label={words.dates}
      edits={edits}
      version={version}
      save={(id) => changeStudio(studio.id, { id, version, ...change() })}
      reload={reload}
    >
      {(problem) => {
        const theirs = edits.meanwhile('assumedOpenedLife');
        const lifeNote =
          theirs === undefined
            ? problem?.faultOf('assumedOpenedLife')
            : texts.settings.meanwhile(writtenLife(assumedLifeOf(theirs === '' ? null : theirs), texts));
        return (
          <>
            <DaysField
              edits={edits}
              field="useByNearDays"
              problem={problem}
              label={words.useByNear}
              description={words.useByNearHint}
              min={0}
              max={730}
            />
            <DaysField
              edits={edits}
              field="openedLifeEndingDays"
              problem={problem}
              label={words.openedLifeEnding}
              description={words.openedLifeEndingHint}
              min={0}
              max={365}
            />
            <Choice
              label={words.assumedLife}
              description={words.assumedLifeHint}
              value={life.unit}
              none={words.noLife}
              error={life.unit === '' ? lifeNote : undefined}
              choices={units.map((unit) => ({ value: unit, label: words.lifeIn[unit] }))}
              onChange={(unit) => setLife({ amount: life.amount === '' ? '12' : life.amount, unit })}
            />
            {life.unit !== '' && (
              <TextField
                edits={edits}
                field="assumedOpenedLife"
                problem={problem}
                label={words.lifeAmount[life.unit]}
                type="number"
                inputMode="numeric"
                min={1}
                step={1}
                required
                value={life.amount}
                error={lifeNote}
                onChange={(event) => setLife({ ...life, amount: event.currentTarget.value })}
              />
            )}
            <TextField
              edits={edits}
              field="morning"
              problem={problem}
              label={words.morning}
              description={words.morningHint}
              type="time"
              required
            />
          </>
        );
      }}
    </ChangeForm>
  );
}

/** Also while the amount is empty or no amount at all. */
function lifeBeingWritten(duration: string): AssumedLife {
  const [, hours, amount = '', letter] = /^P(T?)(.*)([MDH])$/.exec(duration) ?? [];
  if (letter === undefined) return { amount: '', unit: '' };
  return { amount, unit: hours === 'T' ? 'hours' : letter === 'M' ? 'months' : 'days' };
}
