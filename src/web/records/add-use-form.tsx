import { Button, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import type { PersonView } from '../../identity/people.views.js';
import type { SessionView } from '../../sessions/session-record.views.js';
import { ProductSearch } from '../catalogue/product-search.js';
import { wordsOfProduct } from '../catalogue/product-words.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { emptyUse, lateUseOf } from './late-use.js';
import { addUse } from './records.requests.js';
import { UseFields } from './use-fields.js';
import { useStudioTime } from './use-studio-time.js';

/** Adds a use that the record lacks: first what it was, then its lot and how much. */
export function AddUseForm({
  studioId,
  session,
  timeZone,
  people,
  onRecorded,
  onCancel,
}: {
  studioId: string;
  session: SessionView;
  timeZone: string;
  people: readonly PersonView[];
  onRecorded: (remarks: string[]) => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const [product, setProduct] = useState<ProductView>();
  const [draft, setDraft] = useState(emptyUse);
  const appliedAt = useStudioTime(undefined, timeZone);
  const removedAt = useStudioTime(undefined, timeZone);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    if (!product) return;
    const use = lateUseOf(product, draft, { appliedAt: appliedAt.instant, removedAt: removedAt.instant });
    const { madeLotIds, warnings } = await addUse(studioId, session.id, ids.for(use), use);
    await onRecorded([
      texts.late.usesAdded,
      ...(madeLotIds.length > 0 ? [texts.late.lotMade] : []),
      ...warnings,
    ]);
  });
  if (!product) {
    return (
      <>
        <p>{texts.late.addUseHint}</p>
        <ProductSearch
          studioId={studioId}
          label={texts.late.product}
          onChosen={(found) => {
            setProduct(found);
            setDraft(emptyUse);
          }}
        />
        <Button mt="md" variant="default" onClick={onCancel}>
          {texts.app.cancel}
        </Button>
      </>
    );
  }
  return (
    <Fields onSubmit={() => void run()} label={texts.late.addUse}>
      <TextInput
        label={texts.late.product}
        readOnly
        value={wordsOfProduct(product)}
        rightSectionWidth="auto"
        rightSection={
          <Button variant="subtle" onClick={() => setProduct(undefined)}>
            {texts.late.otherProduct}
          </Button>
        }
      />
      <UseFields
        studioId={studioId}
        session={session}
        product={product}
        draft={draft}
        appliedAt={appliedAt}
        removedAt={removedAt}
        people={people}
        problem={problem}
        onChange={setDraft}
      />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}
