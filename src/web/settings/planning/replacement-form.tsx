import { Button, Group } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ProductView } from '../../../catalogue/products.views.js';
import { ProductSearch } from '../../catalogue/product-search.js';
import { wordsOfProduct } from '../../catalogue/product-words.js';
import { Fields } from '../../frame/fields.js';
import { Note } from '../../frame/note.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { findItemPlanning, setItemPlanning } from '../../plans/line/item-planning.requests.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';

/** Says that a product took the place of another, so that the use of the old one counts for the new one. */
export function ReplacementForm({ studioId, onSaved }: { studioId: string; onSaved: () => Promise<void> }) {
  const texts = useTexts();
  const words = texts.planning;
  const [newer, setNewer] = useState<ProductView>();
  const [older, setOlder] = useState<ProductView>();
  const ids = useRef(new RequestIds()).current;
  const begin = () => {
    setNewer(undefined);
    setOlder(undefined);
  };
  const { run, busy, problem } = useAction(async () => {
    if (!newer || !older) return;
    // What else is set of it stays.
    const present = await findItemPlanning(studioId, { kind: 'product', key: newer.id });
    const change = {
      itemKind: 'product' as const,
      itemKey: newer.id,
      serviceTargetPerMille: present?.serviceTargetPerMille ?? null,
      shortageCostMinor: present?.shortageCostMinor ?? null,
      rangeChoice: present?.rangeChoice ?? null,
      replacesProductId: older.id,
      ...(present && { version: present.version }),
    };
    await setItemPlanning(studioId, { id: ids.for(change), ...change });
    await onSaved();
    begin();
  });
  if (!newer) return <ProductSearch studioId={studioId} label={words.newer} onChosen={setNewer} />;
  return (
    <Fields onSubmit={() => void run()} label={words.replacing}>
      <p>{words.newerIs(wordsOfProduct(newer))}</p>
      {older ? (
        <p>{words.olderIs(wordsOfProduct(older))}</p>
      ) : (
        <ProductSearch
          studioId={studioId}
          label={words.older}
          isOffered={({ id }) => id !== newer.id}
          onChosen={setOlder}
        />
      )}
      {problem?.faultOf('replacesProductId') !== undefined ? (
        <Note kind="fault">
          <p>{problem.faultOf('replacesProductId')}</p>
        </Note>
      ) : (
        <ProblemNote problem={problem} />
      )}
      <Group gap="sm">
        <Button type="submit" loading={busy} disabled={!older}>
          {texts.app.save}
        </Button>
        <Button variant="default" onClick={begin}>
          {texts.app.cancel}
        </Button>
      </Group>
    </Fields>
  );
}
