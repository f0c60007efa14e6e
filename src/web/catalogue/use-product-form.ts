import { useState } from 'react';
import type { ProductView } from '../../catalogue/products.views.js';
import type { ServiceProblem } from '../service/problem.js';
import { useAction } from '../service/use-action.js';
import {
  type FieldsOfProduct,
  fieldsOfDraft,
  type ProductDraft,
  type UnreadableNumber,
} from './product-draft.js';

/** Saves a product as it was typed: what of it cannot be read, and what the service says. */
export function useProductForm(
  draft: ProductDraft,
  save: (draft: ProductDraft, fields: FieldsOfProduct) => Promise<ProductView>,
  onSaved: (product: ProductView) => Promise<void>,
) {
  const [unreadable, setUnreadable] = useState<UnreadableNumber[]>([]);
  const { run, busy, problem } = useAction(async () => {
    const read = fieldsOfDraft(draft);
    setUnreadable('unreadable' in read ? read.unreadable : []);
    if ('fields' in read) await onSaved(await save(draft, read.fields));
  });
  return { draft, unreadable, run, busy, problem, remaining: withoutNamed(problem) };
}

/** What the fields do not show already. */
function withoutNamed(problem: ServiceProblem | undefined): ServiceProblem | undefined {
  return problem?.code === 'already-exists' ? undefined : problem;
}
