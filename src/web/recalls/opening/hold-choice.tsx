import { Radio, Stack } from '@mantine/core';
import { useTexts } from '../../texts/texts.js';
import type { HoldPossible, Settling } from './use-settling.js';

const choices: readonly HoldPossible[] = ['all', 'chosen', 'none'];

/** Whether the lots that are only possibly meant are held too; nothing is asked when there are none. */
export function HoldChoice({ settling }: { settling: Settling }) {
  const words = useTexts().opening;
  const { found, holdPossible, setHoldPossible } = settling;
  const possible = found.matches?.possibleLots ?? 0;
  if (possible === 0) return null;
  const offered = choices.filter((choice) => choice !== 'chosen' || settling.areAllListed);
  return (
    <Radio.Group
      label={words.holdPossible(possible)}
      description={words.holdPossibleHint}
      value={holdPossible}
      onChange={(value) => setHoldPossible(value as HoldPossible)}
    >
      <Stack gap="xs" mt="xs">
        {offered.map((choice) => (
          <Radio key={choice} value={choice} label={words.holdPossibleChoices[choice]} />
        ))}
      </Stack>
    </Radio.Group>
  );
}
