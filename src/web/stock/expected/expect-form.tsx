import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import { Fields } from '../../frame/fields.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { expectDelivery } from './expected.requests.js';
import { contentOf, emptyExpected } from './expected-draft.js';
import { ExpectedFields } from './expected-fields.js';

/** Records that something was ordered, and when it should come. */
export function ExpectForm({
  studioId,
  mayAddSupplier,
  onExpected,
}: {
  studioId: string;
  mayAddSupplier: boolean;
  onExpected: () => Promise<void>;
}) {
  const words = useTexts().expected;
  const [draft, setDraft] = useState(emptyExpected);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const content = contentOf(draft);
    await expectDelivery(studioId, { id: ids.for(content), ...content });
    ids.renew();
    setDraft(emptyExpected);
    await onExpected();
  });
  return (
    <Fields onSubmit={() => void run()} label={words.add}>
      <ExpectedFields
        studioId={studioId}
        draft={draft}
        mayAddSupplier={mayAddSupplier}
        noteOf={(field) => problem?.faultOf(field)}
        onChange={setDraft}
      />
      <ProblemNote problem={problem} />
      <div>
        <Button type="submit" loading={busy}>
          {words.addSubmit}
        </Button>
      </div>
    </Fields>
  );
}
