import { useRef, useState } from 'react';
import type { ExpectedDeliveryView } from '../../../stock/expected-deliveries/expected-deliveries.views.js';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { readAnewIfStale } from '../../service/read-anew-if-stale.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
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
  onCancel,
}: {
  studioId: string;
  delivery: ExpectedDeliveryView;
  title: string;
  mayAddSupplier: boolean;
  onChanged: () => Promise<void>;
  onCancel: () => void;
}) {
  const [draft, setDraft] = useState(draftOf(delivery));
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const { id, version } = delivery;
    const change = changeOf(draft, delivery);
    if (Object.keys(change).length > 0) {
      const content = { version, ...change };
      await readAnewIfStale(
        () => changeExpected(studioId, id, { id: ids.for(content), ...content }),
        onChanged,
      );
      await onChanged();
    }
    onCancel();
  });
  return (
    <Fields onSubmit={() => void run()} label={title}>
      <ExpectedFields
        studioId={studioId}
        draft={draft}
        mayAddSupplier={mayAddSupplier}
        problem={problem}
        onChange={setDraft}
      />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}
