import { Radio, Stack, TextInput } from '@mantine/core';
import { Note } from '../frame/note.js';
import { useTexts } from '../texts/texts.js';
import type { WrittenStudioTime } from './use-studio-time.js';

/** A date and time by the clocks of the studio; what they skip or show twice is said, not guessed. */
export function StudioTimeField({
  label,
  time,
  required = true,
  error,
}: {
  label: string;
  time: WrittenStudioTime;
  required?: boolean;
  error?: string | undefined;
}) {
  const texts = useTexts();
  const { means } = time;
  return (
    <>
      <TextInput
        type="datetime-local"
        label={label}
        description={texts.plan.startHint(time.timeZone)}
        required={required}
        value={time.local}
        error={error}
        onChange={(event) => time.write(event.currentTarget.value)}
      />
      {means?.kind === 'never' && (
        <Note kind="fault">
          <p>{texts.studioTime.never}</p>
        </Note>
      )}
      {means?.kind === 'twice' && (
        <Radio.Group
          label={texts.studioTime.twice}
          value={time.which ?? null}
          onChange={(which) => time.choose(which as 'first' | 'second')}
        >
          <Stack gap="sm" mt="xs">
            <Radio value="first" label={texts.studioTime.first(means.first.offset)} />
            <Radio value="second" label={texts.studioTime.second(means.second.offset)} />
          </Stack>
        </Radio.Group>
      )}
    </>
  );
}
