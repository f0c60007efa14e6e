import { useRef, useState } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { isProblem } from '../service/problem.js';
import { RequestIds } from '../service/request-ids.js';
import { useTexts } from '../texts/texts.js';
import { changeProduct } from './catalogue.requests.js';
import { draftOfProduct } from './product-draft.js';
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
  const form = useProductForm(
    draftOfProduct(product),
    async ({ makerId, name, notation }, { notation: written, ...fields }) => {
      const change = {
        version: product.version,
        makerId,
        name: name.trim(),
        ...fields,
        // A notation replaces the whole configuration, so it goes only where it was changed.
        ...(written != null && notation !== product.notation && { notation: written }),
      };
      try {
        return await changeProduct(studioId, product.id, { id: ids.for(change), ...change });
      } catch (error) {
        if (isProblem(error, 'stale-version')) await onStale();
        throw error;
      }
    },
    async () => {
      ids.renew();
      await onChanged();
    },
  );
  const [version, setVersion] = useState(product.version);
  if (version !== product.version) {
    // Somebody else changed it: what is shown is what a change would be made from.
    setVersion(product.version);
    form.setDraft(draftOfProduct(product));
  }
  return (
    <Fields onSubmit={() => void form.run()} label={texts.products.changeOf(wordsOfProduct(product))}>
      <ProductFields studioId={studioId} isNew={false} {...form} onChange={form.setDraft} />
      <SaveOrCancel problem={form.remaining} busy={form.busy} onCancel={onCancel} />
    </Fields>
  );
}
