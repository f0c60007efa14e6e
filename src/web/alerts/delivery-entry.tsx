import { Button } from '@mantine/core';
import { type ReactNode, useRef } from 'react';
import type { AlertDeliveryView } from '../../alerts/alerts.views.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Entry } from '../frame/entries.js';
import { ProblemNote } from '../frame/problem-note.js';
import { ServiceWords } from '../frame/service-words.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { sendAgain } from './alerts.requests.js';
import { useAlertsAnew } from './use-alerts-anew.js';

/** One message: what it says, where it goes, and what came of it. */
export function DeliveryEntry({
  standing: { studioId, permissions },
  delivery,
  where,
  leadsNowhere = false,
  children,
}: {
  standing: StandingView;
  delivery: AlertDeliveryView;
  /** To whom or where it goes, beside the way; undefined: the way says it. */
  where?: string | undefined;
  /** What has nowhere to go any more is not sent again. */
  leadsNowhere?: boolean;
  children?: ReactNode;
}) {
  const words = useTexts().alertPages;
  const when = useStudioInstants(studioId);
  const alertsAnew = useAlertsAnew(studioId);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    await sendAgain(studioId, delivery.id, ids.for({ deliveryId: delivery.id }));
    ids.renew();
    await alertsAnew();
  });
  const { channel, event, state, attempts, unknownAttempts, createdAt } = delivery;
  const { nextAttemptAt, settledAt, lastError } = delivery;
  const name = [words.channels[channel], where].filter((part) => part !== undefined).join(', ');
  const facts = [
    words.told[event],
    words.promisedAt(when(createdAt)),
    words.attempts(attempts),
    state === 'pending' && words.nextTry(when(nextAttemptAt)),
    settledAt !== null && words.settledAt(when(settledAt)),
  ].filter((part) => part !== false);
  return (
    <Entry
      name={name}
      mark={words.deliveryStates[state]}
      actions={
        state === 'undeliverable' &&
        !leadsNowhere &&
        permissions.includes('answer alerts') && (
          <Button
            variant="default"
            loading={busy}
            aria-label={words.sendAgainOf(`${name}, ${words.told[event]}`)}
            onClick={() => void run()}
          >
            {words.sendAgain}
          </Button>
        )
      }
      below={<ProblemNote problem={problem} />}
    >
      <p>{facts.join(', ')}</p>
      {lastError !== null && state !== 'sent' && (
        <p>
          {words.cause} <ServiceWords>{lastError}</ServiceWords>
        </p>
      )}
      {unknownAttempts > 0 && <p>{words.unknownAttempts(unknownAttempts)}</p>}
      {children}
    </Entry>
  );
}
