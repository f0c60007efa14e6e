import { useState } from 'react';
import type { ProductView } from '../../../catalogue/products.views.js';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { DateThresholdView } from '../../../stock/date-thresholds/date-thresholds.views.js';
import { ProductSearch } from '../../catalogue/product-search.js';
import { wordsOfProduct } from '../../catalogue/product-words.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { Section } from '../../frame/section.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { WarningEntry } from './warning-entry.js';
import { WarningForm } from './warning-form.js';
import { findWarning, listWarnings } from './warnings.requests.js';

/** Products of which the studio is told earlier, or later, than of the others. */
export function WarningsSection({ standing: { studioId, permissions } }: { standing: StandingView }) {
  const words = useTexts().productDays;
  const list = usePages(['date thresholds', studioId], (after) => listWarnings(studioId, after));
  const [chosen, setChosen] = useState<ProductView>();
  /** What somebody else set of it since it was chosen. */
  const [present, setPresent] = useState<DateThresholdView>();
  const maySet = permissions.includes('set levels');
  return (
    <Section title={words.title} hint={words.hint}>
      <PagedEntries
        label={words.title}
        list={list}
        none={words.none}
        entry={(warning) => (
          <WarningEntry
            key={warning.productId}
            studioId={studioId}
            warning={warning}
            maySet={maySet}
            onChanged={list.reload}
          />
        )}
      />
      {maySet && !chosen && (
        <ProductSearch
          studioId={studioId}
          label={words.add}
          isOffered={({ id }) => !list.items?.some(({ productId }) => productId === id)}
          onChosen={(product) => {
            setPresent(undefined);
            setChosen(product);
          }}
        />
      )}
      {chosen && (
        <WarningForm
          key={chosen.id}
          studioId={studioId}
          productId={chosen.id}
          title={words.setOf(wordsOfProduct(chosen))}
          present={present}
          reload={async () => {
            // The list may not have come as far as this product.
            setPresent(await findWarning(studioId, chosen.id));
            await list.reload();
          }}
          onClose={() => setChosen(undefined)}
        />
      )}
    </Section>
  );
}
