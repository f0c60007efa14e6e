import { Checkbox, Stack, Textarea } from '@mantine/core';
import type { ClosingObstacle } from '../../../../recalls/vocabulary.js';
import { useTexts } from '../../../texts/texts.js';

const longestReason = 1000;

/** Closing although something stands against it takes a reason. */
export function OverrideField({
  obstacle,
  reason,
  onChange,
}: {
  obstacle: ClosingObstacle;
  /** Undefined: it is not overridden. */
  reason: string | undefined;
  onChange: (reason: string | undefined) => void;
}) {
  const words = useTexts().recallClosing;
  return (
    <Stack gap="sm">
      <Checkbox
        label={words.override}
        aria-label={words.overrideOf[obstacle]}
        checked={reason !== undefined}
        onChange={(event) => onChange(event.currentTarget.checked ? '' : undefined)}
      />
      {reason !== undefined && (
        <Textarea
          label={words.reasonOf[obstacle]}
          description={words.reasonHint}
          required
          autosize
          minRows={2}
          autoComplete="off"
          maxLength={longestReason}
          value={reason}
          onChange={(event) => onChange(event.currentTarget.value)}
        />
      )}
    </Stack>
  );
}
