import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Entries } from '../../frame/entries.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { listDeliveries } from '../alerts.requests.js';
import { DeliveryEntry } from '../delivery-entry.js';
import { useWhereTold } from '../use-where-told.js';

/** Who was told of an alert, and what came of each message. */
export function DeliveriesSection({ standing, alertId }: { standing: StandingView; alertId: string }) {
  const texts = useTexts();
  const words = texts.alertPages.one;
  const { studioId } = standing;
  const { answer, problem } = useAnswer(
    ['alerts', studioId, alertId, 'deliveries'],
    () => listDeliveries(studioId, alertId),
    (deliveries) => deliveries.some(({ state }) => state === 'pending'),
  );
  // The log tells nobody.
  const isNobodyTold = answer?.every(({ channel }) => channel === 'log');
  const whereOf = useWhereTold(standing);
  return (
    <Section title={words.deliveries} hint={words.deliveriesHint}>
      <ProblemNote problem={problem} />
      {answer === undefined && problem === undefined && <p role="status">{texts.app.loading}</p>}
      {isNobodyTold && <p>{words.noDeliveries}</p>}
      {answer !== undefined && answer.length > 0 && (
        <Entries label={words.deliveries}>
          {answer.map((delivery) => (
            <DeliveryEntry
              key={delivery.id}
              standing={standing}
              delivery={delivery}
              where={whereOf(delivery)}
            />
          ))}
        </Entries>
      )}
    </Section>
  );
}
