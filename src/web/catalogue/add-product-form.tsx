import { Button, Group } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RequestIds } from '../service/request-ids.js';
import { useTexts } from '../texts/texts.js';
import { addProduct } from './catalogue.requests.js';
import { newProductDraft, type ProductDraft } from './product-draft.js';
import { ProductFields } from './product-fields.js';
import { useProductForm } from './use-product-form.js';

/** Adds a product to the register. */
export function AddProductForm({
  studioId,
  label,
  start = newProductDraft('pigment'),
  onDraft,
  onAdded,
  onCancel,
}: {
  studioId: string;
  label: string;
  /** What was filled in before. */
  start?: ProductDraft;
  /** Keeps what is filled in, where the form may be left before it is done. */
  onDraft?: (draft: ProductDraft) => void;
  onAdded: (product: ProductView) => Promise<void>;
  onCancel?: () => void;
}) {
  const texts = useTexts();
  const ids = useRef(new RequestIds()).current;
  const [draft, setDraft] = useState(start);
  const form = useProductForm(
    draft,
    ({ kind, makerId, name }, fields) => {
      const product = { kind, makerId, name: name.trim(), ...fields };
      return addProduct(studioId, { id: ids.for(product), ...product });
    },
    async (product) => {
      ids.renew();
      setDraft({ ...newProductDraft(product.kind), makerId: product.makerId });
      await onAdded(product);
    },
  );
  const change = (written: ProductDraft) => {
    setDraft(written);
    onDraft?.(written);
  };
  return (
    <Fields onSubmit={() => void form.run()} label={label}>
      <ProductFields studioId={studioId} isNew {...form} onChange={change} />
      <ProblemNote problem={form.remaining} />
      <Group gap="sm">
        <Button type="submit" loading={form.busy}>
          {texts.products.addSubmit}
        </Button>
        {onCancel && (
          <Button variant="default" onClick={onCancel}>
            {texts.app.cancel}
          </Button>
        )}
      </Group>
    </Fields>
  );
}
