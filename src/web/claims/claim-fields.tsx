import { Textarea, TextInput } from '@mantine/core';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';

const longestNote = 2_000;

/** How many pieces, what is asked for them, and what the supplier is told beside; all as typed. */
export interface ClaimDraft {
  pieces: string;
  amount: string;
  note: string;
}

/** What is asked for, and what is told beside. */
export function ClaimFields({
  draft,
  currency,
  problem,
  onChange,
}: {
  draft: ClaimDraft;
  currency: string;
  problem: ServiceProblem | undefined;
  onChange: (change: Partial<ClaimDraft>) => void;
}) {
  const words = useTexts().supplierClaims;
  return (
    <>
      <TextInput
        label={words.piecesLabel}
        inputMode="numeric"
        autoComplete="off"
        value={draft.pieces}
        error={problem?.faultOf('pieces')}
        onChange={(event) => onChange({ pieces: event.currentTarget.value })}
      />
      <TextInput
        label={words.amountIn(currency)}
        description={words.amountHint}
        inputMode="decimal"
        autoComplete="off"
        value={draft.amount}
        error={problem?.faultOf('amount') ?? problem?.faultOf('amountMinor')}
        onChange={(event) => onChange({ amount: event.currentTarget.value })}
      />
      <Textarea
        label={words.note}
        description={words.noteHint}
        autosize
        minRows={2}
        maxLength={longestNote}
        value={draft.note}
        error={problem?.faultOf('note')}
        onChange={(event) => onChange({ note: event.currentTarget.value })}
      />
    </>
  );
}
