import { useCallback } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { isProblem } from '../service/problem.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { DraftPart } from './draft-part.js';
import { MailNote } from './mail-note.js';
import { OrderDocuments } from './order-documents.js';
import { OrderFacts } from './order-facts.js';
import { OrderLines } from './order-lines.js';
import { OrderStepButtons } from './order-step-buttons.js';
import { showOrder } from './orders.requests.js';
import { ReceiptPart } from './receipt-part.js';
import { SendingPart } from './sending-part.js';

const isMailUnderWay = ({ mail }: PurchaseOrderView) => mail?.state === 'waiting';

/** One order: what stands in it, what is to be done with it, and what came of it. */
export function OrderPage({ standing, id: orderId }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const words = texts.orders;
  const { studioId, studioName, permissions } = standing;
  const {
    answer: order,
    problem,
    reload,
  } = useAnswer(['purchase order', studioId, orderId], () => showOrder(studioId, orderId), isMailUnderWay);
  const reloaded = useCallback(async () => {
    await reload();
  }, [reload]);
  const mayPlan = permissions.includes('plan orders');
  const mayPlace = permissions.includes('place orders');
  if (problem && isProblem(problem, 'not-found')) return <NoSuchPage />;
  const can = (step: PurchaseOrderView['steps'][number]) => order?.steps.includes(step) === true;
  return (
    <Page above={studioName} title={order ? words.orderOf(order.number, order.supplierName) : words.title}>
      <ProblemNote problem={problem} />
      {!order && !problem && <p role="status">{texts.app.loading}</p>}
      {order && (
        <>
          <Section title={words.facts}>
            <OrderFacts studioId={studioId} order={order} />
            {order.mail && <MailNote studioId={studioId} mail={order.mail} />}
            {mayPlace && <OrderDocuments studioId={studioId} order={order} />}
          </Section>
          {mayPlan && can('change') ? (
            <DraftPart studioId={studioId} order={order} mayPlace={mayPlace} onChanged={reloaded} />
          ) : (
            <Section title={words.whatIsOrdered}>
              <OrderLines order={order} />
            </Section>
          )}
          {mayPlace && can('send') && <SendingPart studioId={studioId} order={order} onChanged={reloaded} />}
          {order.sentAt !== null && (
            <ReceiptPart
              studioId={studioId}
              order={order}
              mayReceive={permissions.includes('receive stock')}
            />
          )}
          {mayPlace && <OrderStepButtons studioId={studioId} order={order} onChanged={reloaded} />}
        </>
      )}
    </Page>
  );
}
