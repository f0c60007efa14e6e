import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { Section } from '../frame/section.js';
import { useEdits } from '../frame/use-edits.js';
import { useTexts } from '../texts/texts.js';
import { ApprovalPart } from './approval-part.js';
import { DraftForm } from './draft-form.js';
import { draftOfOrder, type OrderDraft } from './order-draft.js';

/** A draft, and its approval: only what is saved is approved. */
export function DraftPart({
  studioId,
  order,
  mayPlace,
  onChanged,
}: {
  studioId: string;
  order: PurchaseOrderView;
  mayPlace: boolean;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.orders;
  const edits = useEdits<OrderDraft>(draftOfOrder(order, texts.language));
  return (
    <>
      <Section title={words.whatIsOrdered}>
        <DraftForm studioId={studioId} order={order} edits={edits} onChanged={onChanged} />
      </Section>
      {mayPlace && order.steps.includes('approve') && (
        <ApprovalPart studioId={studioId} order={order} isEdited={edits.isChanged} onChanged={onChanged} />
      )}
    </>
  );
}
