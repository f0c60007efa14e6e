import { Button, Group } from '@mantine/core';
import { useRef } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RequestIds } from '../service/request-ids.js';
import { useTexts } from '../texts/texts.js';
import { addProduct } from './catalogue.requests.js';
import { newProductDraft } from './product-draft.js';
import { ProductFields } from './product-fields.js';
import { useProductForm } from './use-product-form.js';

/** Adds a product to the register. */
export function AddProductForm({
  studioId,
  label,
  onAdded,
  onCancel,
}: {
  studioId: string;
  label: string;
  onAdded: (product: ProductView) => Promise<void>;
  onCancel?: () => void;
}) {
  const texts = useTexts();
  const ids = useRef(new RequestIds()).current;
  const form = useProductForm(
    newProductDraft('pigment'),
    (draft, fields) => {
      const product = { kind: draft.kind, makerId: draft.makerId, name: draft.name.trim(), ...fields };
      return addProduct(studioId, { id: ids.for(product), ...product });
    },
    async (product) => {
      ids.renew();
      form.setDraft({ ...newProductDraft(product.kind), makerId: product.makerId });
      await onAdded(product);
    },
  );
  return (
    <Fields onSubmit={() => void form.run()} label={label}>
      <ProductFields studioId={studioId} isNew {...form} onChange={form.setDraft} />
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
