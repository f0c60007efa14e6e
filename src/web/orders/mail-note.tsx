import type { PurchaseOrderMailView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { Note } from '../frame/note.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { useTexts } from '../texts/texts.js';

/** How the latest mail of an order stands. */
export function MailNote({ studioId, mail }: { studioId: string; mail: PurchaseOrderMailView }) {
  const words = useTexts().orders;
  const when = useStudioInstants(studioId);
  const { state, attempts, lastError, nextAttemptAt, mayHaveArrivedTwice } = mail;
  return (
    <Note kind={state === 'failed' ? 'fault' : 'plain'}>
      <p>
        {words.mails[state]}
        {attempts > 0 && ` ${words.mailAttempts(attempts)}`}
        {state === 'waiting' &&
          nextAttemptAt !== null &&
          attempts > 0 &&
          `, ${words.mailNext(when(nextAttemptAt))}`}
      </p>
      {lastError !== null && state !== 'sent' && <p>{words.mailError(lastError)}</p>}
      {mayHaveArrivedTwice && <p>{words.mailTwice}</p>}
    </Note>
  );
}
