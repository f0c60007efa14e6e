import type { ExpectedDeliveryView } from '../../../stock/expected-deliveries/expected-deliveries.views.js';
import { useEdits } from '../../frame/use-edits.js';
import { ChangeForm } from '../../settings/change-form.js';
import { noteOf } from '../../settings/note-of-field.js';
import { useTexts } from '../../texts/texts.js';
import { changeExpected } from './expected.requests.js';
import { changeOf, draftOf } from './expected-draft.js';
import { ExpectedFields } from './expected-fields.js';

/** Changes what is known of an expected delivery, such as its day. */
export function ChangeExpectedForm({
  studioId,
  delivery,
  title,
  mayAddSupplier,
  onChanged,
  onClose,
}: {
  studioId: string;
  delivery: ExpectedDeliveryView;
  title: string;
  mayAddSupplier: boolean;
  onChanged: () => Promise<void>;
  onClose: () => void;
}) {
  const texts = useTexts();
  const edits = useEdits(draftOf(delivery));
  const { id: expectedId, version, supplierName } = delivery;
  return (
    <ChangeForm
      label={title}
      edits={edits}
      version={version}
      save={(id) => changeExpected(studioId, expectedId, { id, version, ...changeOf(edits.draft, delivery) })}
      reload={onChanged}
      onClose={onClose}
    >
      {(problem) => (
        <ExpectedFields
          studioId={studioId}
          draft={edits.draft}
          mayAddSupplier={mayAddSupplier}
          noteOf={(field) =>
            // A supplier is read by its name.
            field === 'supplierId' && edits.meanwhile(field) !== undefined
              ? texts.settings.meanwhile(supplierName)
              : noteOf(texts, edits, field, problem)
          }
          onChange={edits.set}
        />
      )}
    </ChangeForm>
  );
}
