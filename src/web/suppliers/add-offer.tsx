import { Button, Group } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import { ProductSearch } from '../catalogue/product-search.js';
import { wordsOfProduct } from '../catalogue/product-words.js';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useEdits } from '../frame/use-edits.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { contentOfOffer, newOffer, type OfferDraft } from './offer-draft.js';
import { OfferFields } from './offer-fields.js';
import { isOfPrices } from './price-fields.js';
import { addOffer } from './suppliers.requests.js';
import { unreadableAmounts } from './unreadable-amounts.js';

/** Records that a supplier offers a product: first which, then in which packs and at what price. */
export function AddOffer({
  studioId,
  supplierId,
  currency,
  onAdded,
}: {
  studioId: string;
  supplierId: string;
  currency: string;
  onAdded: () => Promise<void>;
}) {
  const words = useTexts().suppliers;
  const [product, setProduct] = useState<ProductView>();
  if (!product) return <ProductSearch studioId={studioId} label={words.whichProduct} onChosen={setProduct} />;
  return (
    <NewOfferForm
      key={product.id}
      studioId={studioId}
      supplierId={supplierId}
      currency={currency}
      product={product}
      onAdded={onAdded}
      onClose={() => setProduct(undefined)}
    />
  );
}

function NewOfferForm({
  studioId,
  supplierId,
  currency,
  product,
  onAdded,
  onClose,
}: {
  studioId: string;
  supplierId: string;
  currency: string;
  product: ProductView;
  onAdded: () => Promise<void>;
  onClose: () => void;
}) {
  const texts = useTexts();
  const words = texts.suppliers;
  const edits = useEdits<OfferDraft>(newOffer);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const { content, unreadable } = contentOfOffer(edits.draft, currency);
    if (content === undefined) throw unreadableAmounts(unreadable, words.noAmount(currency));
    const offer = { supplierId, productId: product.id, currency, ...content };
    await addOffer(studioId, { id: ids.for(offer), ...offer });
    await onAdded();
    onClose();
  });
  const name = wordsOfProduct(product);
  return (
    <Fields onSubmit={() => void run()} label={words.offerOf(name)}>
      <p>
        <strong>{name}</strong>
      </p>
      <OfferFields
        edits={edits}
        currency={currency}
        inBottles={product.stockForm === 'container'}
        problem={problem}
      />
      {/* What is wrong with a price stands at it. */}
      <ProblemNote problem={isOfPrices(problem) ? undefined : problem} />
      <Group gap="sm">
        <Button type="submit" loading={busy}>
          {words.addOfferSubmit}
        </Button>
        <Button variant="default" onClick={onClose}>
          {texts.app.cancel}
        </Button>
      </Group>
    </Fields>
  );
}
