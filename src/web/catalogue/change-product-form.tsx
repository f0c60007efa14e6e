import { useRef } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { useEdits } from '../frame/use-edits.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useTexts } from '../texts/texts.js';
import { changeProduct } from './catalogue.requests.js';
import { draftOfProduct, type ProductDraft } from './product-draft.js';
import { ProductFields } from './product-fields.js';
import { wordsOfProduct } from './product-words.js';
import { useProductForm } from './use-product-form.js';

/** Changes what is known of a product; its kind and how it is kept stay. */
export function ChangeProductForm({
  studioId,
  product,
  onChanged,
  onStale,
  onCancel,
}: {
  studioId: string;
  product: ProductView;
  onChanged: () => Promise<void>;
  /** Somebody else changed it: read it again. */
  onStale: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const ids = useRef(new RequestIds()).current;
  // Read anew, what was written here stays, and nothing else of theirs is overwritten.
  const edits = useEdits<ProductDraft>(draftOfProduct(product));
  const form = useProductForm(
    edits.draft,
    async ({ makerId, name, notation }, { notation: written, ...fields }) => {
      const change = {
        version: product.version,
        makerId,
        name: name.trim(),
        ...fields,
        // A notation replaces the whole configuration, so it goes only where it was changed.
        ...(written != null && notation !== product.notation && { notation: written }),
      };
      return readAnewIfStale(
        () => changeProduct(studioId, product.id, { id: ids.for(change), ...change }),
        onStale,
      );
    },
    async () => {
      ids.renew();
      await onChanged();
    },
  );
  return (
    <Fields onSubmit={() => void form.run()} label={texts.products.changeOf(wordsOfProduct(product))}>
      <ProductFields studioId={studioId} isNew={false} {...form} onChange={edits.set} />
      <SaveOrCancel problem={form.remaining} busy={form.busy} onCancel={onCancel} />
    </Fields>
  );
}
