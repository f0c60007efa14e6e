import { Button, TextInput } from '@mantine/core';
import { Choice } from '../../frame/choice.js';
import { useProcedures } from '../../service/studio-answers.js';
import { useTexts } from '../../texts/texts.js';
import styles from './extra-sessions.module.css';
import { type ExtraSessionsDraft, extraSessionsFaults } from './what-if-draft.js';

const most = 20;

/** More or fewer sessions of a procedure on a day than are booked. */
export function ExtraSessions({
  studioId,
  extra,
  today,
  isTold,
  faultOf,
  onChange,
}: {
  studioId: string;
  extra: readonly ExtraSessionsDraft[];
  /** The studio's local day, ISO. */
  today: string;
  /** Whether what is missing is told. */
  isTold: boolean;
  /** What the service says is wrong with a field. */
  faultOf: (index: number, field: keyof ExtraSessionsDraft) => string | undefined;
  onChange: (extra: ExtraSessionsDraft[]) => void;
}) {
  const words = useTexts().whatIf;
  const procedures = useProcedures(studioId).answer ?? [];
  const set = (index: number, change: Partial<ExtraSessionsDraft>) =>
    onChange(extra.map((one, at) => (at === index ? { ...one, ...change } : one)));
  const errorOf = (index: number, field: keyof ExtraSessionsDraft) => {
    const one = extra[index];
    const isFault = isTold && one !== undefined && extraSessionsFaults(one, today)[field];
    return isFault ? words.extraFaults[field] : faultOf(index, field);
  };
  return (
    <>
      {extra.map((one, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: they have no names, and keep their order.
        <fieldset key={index} className={styles.sessions}>
          <legend>{words.extraOf(index + 1)}</legend>
          <Choice
            label={words.procedure}
            value={one.procedureId}
            none={words.chooseProcedure}
            choices={procedures.map(({ id, name }) => ({ value: id, label: name }))}
            required
            error={errorOf(index, 'procedureId')}
            onChange={(procedureId) => set(index, { procedureId })}
          />
          <TextInput
            type="date"
            label={words.on}
            min={today}
            required
            error={errorOf(index, 'on')}
            value={one.on}
            onChange={({ currentTarget: { value } }) => set(index, { on: value })}
          />
          <TextInput
            type="number"
            step={1}
            min={-100}
            max={100}
            label={words.sessions}
            description={words.sessionsHint}
            required
            error={errorOf(index, 'sessions')}
            value={one.sessions}
            onChange={({ currentTarget: { value } }) => set(index, { sessions: value })}
          />
          <div>
            <Button
              variant="default"
              aria-label={words.removeExtra(index + 1)}
              onClick={() => onChange(extra.filter((_, at) => at !== index))}
            >
              {words.remove}
            </Button>
          </div>
        </fieldset>
      ))}
      {extra.length < most && (
        <div>
          <Button
            variant="default"
            onClick={() => onChange([...extra, { procedureId: '', on: '', sessions: '1' }])}
          >
            {words.addExtra}
          </Button>
        </div>
      )}
    </>
  );
}
