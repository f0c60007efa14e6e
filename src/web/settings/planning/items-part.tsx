import { useState } from 'react';
import type { ProductView } from '../../../catalogue/products.views.js';
import { ProductSearch } from '../../catalogue/product-search.js';
import { wordsOfProduct } from '../../catalogue/product-words.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { Section } from '../../frame/section.js';
import { ItemPlanningForm } from '../../plans/line/item-planning-form.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { ItemEntry } from './item-entry.js';
import { listItemPlannings } from './planning.requests.js';
import { ReplacementForm } from './replacement-form.js';

/** Items that are planned otherwise than the studio plans, and products that took the place of others. */
export function ItemsPart({ studioId, currency }: { studioId: string; currency: string }) {
  const words = useTexts().planning;
  const list = usePages(['item plannings', studioId], (after) => listItemPlannings(studioId, after));
  const [chosen, setChosen] = useState<ProductView>();
  // Somebody else may have planned it otherwise meanwhile.
  const planned = list.items?.find(
    ({ itemKind, itemKey }) => itemKind === 'product' && itemKey === chosen?.id,
  );
  return (
    <>
      <Section title={words.items} hint={words.itemsHint}>
        <PagedEntries
          label={words.items}
          list={list}
          none={words.noItems}
          entry={(item) => (
            <ItemEntry
              key={`${item.itemKind} ${item.itemKey}`}
              studioId={studioId}
              item={item}
              currency={currency}
              onChanged={list.reload}
            />
          )}
        />
        {!chosen && (
          <ProductSearch
            studioId={studioId}
            label={words.addItem}
            isOffered={({ id }) => !list.items?.some(({ itemKey }) => itemKey === id)}
            onChosen={setChosen}
          />
        )}
        {chosen && (
          <>
            <p>
              <strong>{wordsOfProduct(chosen)}</strong>
            </p>
            <ItemPlanningForm
              key={chosen.id}
              studioId={studioId}
              item={{ kind: 'product', key: chosen.id }}
              planning={planned ?? null}
              currency={currency}
              reload={list.reload}
              onClose={() => setChosen(undefined)}
            />
          </>
        )}
      </Section>
      <Section title={words.replacing} hint={words.replacingHint}>
        <ReplacementForm studioId={studioId} onSaved={list.reload} />
      </Section>
    </>
  );
}
