import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type {
  AlertDestinationView,
  RotatedSecretView,
} from '../../../alerts/destinations/alert-destinations.views.js';
import { ConfirmButton } from '../../frame/confirm-button.js';
import { ShownOnce } from '../../frame/shown-once.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { RequestIds } from '../../service/request-ids.js';
import { useTexts } from '../../texts/texts.js';
import { DestinationEntry } from '../../told/destination-entry.js';
import { nameOfDestination } from '../../told/destination-name.js';
import { ChangeWebhookForm } from './change-webhook-form.js';
import { rotateSecret } from './channels.requests.js';

/** One webhook: where it leads, from which severity on, and its secret anew. */
export function WebhookEntry({
  studioId,
  webhook,
  onChanged,
}: {
  studioId: string;
  webhook: AlertDestinationView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.channels;
  const when = useStudioInstants(studioId);
  const ids = useRef(new RequestIds()).current;
  const [isChanging, setIsChanging] = useState(false);
  const [rotated, setRotated] = useState<RotatedSecretView>();
  const name = nameOfDestination(webhook, texts);
  const rotate = async () => {
    const made = await rotateSecret(studioId, webhook.id, ids.for({ rotate: webhook.id }));
    ids.renew();
    setRotated(made);
    await onChanged();
  };
  return (
    <DestinationEntry
      studioId={studioId}
      destination={webhook}
      onChanged={onChanged}
      actions={
        <>
          <Button
            variant="default"
            aria-label={words.changeOf(name)}
            aria-expanded={isChanging}
            onClick={() => setIsChanging(!isChanging)}
          >
            {words.change}
          </Button>
          <ConfirmButton label={words.rotateOf(name)} question={words.rotateQuestion} action={rotate}>
            {words.rotate}
          </ConfirmButton>
        </>
      }
      below={
        <>
          {isChanging && (
            <ChangeWebhookForm
              studioId={studioId}
              webhook={webhook}
              onChanged={onChanged}
              onClose={() => setIsChanging(false)}
            />
          )}
          {rotated && (
            <ShownOnce
              title={words.secretOf(name)}
              label={words.secret}
              value={rotated.secret}
              onDone={() => setRotated(undefined)}
            >
              <p>
                {words.secretDetail} {words.oldUntil(when(rotated.oldValidUntil))}
              </p>
            </ShownOnce>
          )}
        </>
      }
    >
      <p>{[webhook.address, words.from(texts.alerts.severities[webhook.minimumSeverity])].join(', ')}</p>
    </DestinationEntry>
  );
}
