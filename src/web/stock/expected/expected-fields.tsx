import { TextInput } from '@mantine/core';
import { CompanyField } from '../../catalogue/company-field.js';
import type { ServiceProblem } from '../../service/problem.js';
import { useTexts } from '../../texts/texts.js';
import type { ExpectedDraft } from './expected-draft.js';

/** From whom it comes, and when. */
export function ExpectedFields({
  studioId,
  draft,
  mayAddSupplier,
  problem,
  onChange,
}: {
  studioId: string;
  draft: ExpectedDraft;
  mayAddSupplier: boolean;
  problem: ServiceProblem | undefined;
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
        error={problem?.faultOf('supplierId')}
        onChange={(supplierId) => set({ supplierId })}
      />
      <TextInput
        type="date"
        label={words.expectedOn}
        description={words.expectedOnHint}
        required
        value={draft.expectedOn}
        error={problem?.faultOf('expectedOn')}
        onChange={(event) => set({ expectedOn: event.currentTarget.value })}
      />
      <TextInput
        label={words.referenceLabel}
        description={words.referenceHint}
        autoComplete="off"
        maxLength={100}
        value={draft.reference}
        error={problem?.faultOf('reference')}
        onChange={(event) => set({ reference: event.currentTarget.value })}
      />
      <TextInput
        type="date"
        label={words.orderedOn}
        description={words.orderedOnHint}
        value={draft.orderedOn}
        error={problem?.faultOf('orderedOn')}
        onChange={(event) => set({ orderedOn: event.currentTarget.value })}
      />
    </>
  );
}
