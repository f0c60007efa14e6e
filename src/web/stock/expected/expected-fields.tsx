import { TextInput } from '@mantine/core';
import { CompanyField } from '../../catalogue/company-field.js';
import { useTexts } from '../../texts/texts.js';
import type { ExpectedDraft } from './expected-draft.js';

/** From whom it comes, and when. */
export function ExpectedFields({
  studioId,
  draft,
  mayAddSupplier,
  noteOf,
  onChange,
}: {
  studioId: string;
  draft: ExpectedDraft;
  mayAddSupplier: boolean;
  /** What is to be said at a field. */
  noteOf: (field: keyof ExpectedDraft) => string | undefined;
  onChange: (draft: ExpectedDraft) => void;
}) {
  const words = useTexts().expected;
  const set = (change: Partial<ExpectedDraft>) => onChange({ ...draft, ...change });
  return (
    <>
      <CompanyField
        studioId={studioId}
        kind="supplier"
        mayAdd={mayAddSupplier}
        value={draft.supplierId}
        error={noteOf('supplierId')}
        onChange={(supplierId) => set({ supplierId })}
      />
      <TextInput
        type="date"
        label={words.expectedOn}
        description={words.expectedOnHint}
        required
        value={draft.expectedOn}
        error={noteOf('expectedOn')}
        onChange={(event) => set({ expectedOn: event.currentTarget.value })}
      />
      <TextInput
        label={words.referenceLabel}
        description={words.referenceHint}
        autoComplete="off"
        maxLength={100}
        value={draft.reference}
        error={noteOf('reference')}
        onChange={(event) => set({ reference: event.currentTarget.value })}
      />
      <TextInput
        type="date"
        label={words.orderedOn}
        description={words.orderedOnHint}
        value={draft.orderedOn}
        error={noteOf('orderedOn')}
        onChange={(event) => set({ orderedOn: event.currentTarget.value })}
      />
    </>
  );
}
