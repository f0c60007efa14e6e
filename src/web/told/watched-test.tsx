import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { ServiceWords } from '../frame/service-words.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { useTexts } from '../texts/texts.js';
import { useDelivery } from './use-delivery.js';

/** What becomes of a test, until it is sent or given up. */
export function WatchedTest({
  studioId,
  destinationId,
  deliveryId,
  waitsBecause,
}: {
  studioId: string;
  destinationId: string;
  deliveryId: string;
  /** Why it cannot be sent just now, where that is known beforehand. */
  waitsBecause?: string | undefined;
}) {
  const words = useTexts().destination;
  const when = useStudioInstants(studioId);
  const { delivery, problem } = useDelivery(studioId, destinationId, deliveryId);
  if (problem) return <ProblemNote problem={problem} />;
  const cause = delivery?.lastError ?? '';
  switch (delivery?.state) {
    case 'sent':
      return (
        <Note kind="good">
          <p>{words.testSent}</p>
        </Note>
      );
    case 'undeliverable':
      return (
        <Note kind="fault">
          <p>
            {words.testNotSent} <ServiceWords>{cause}</ServiceWords>
          </p>
        </Note>
      );
    default:
      return (
        <Note kind="plain">
          {cause !== '' && delivery ? (
            <p>
              {words.testLater(when(delivery.nextAttemptAt))} <ServiceWords>{cause}</ServiceWords>
            </p>
          ) : (
            <p>{waitsBecause ?? words.testing}</p>
          )}
        </Note>
      );
  }
}
