import { useState } from 'react';
import { Entries } from '../../frame/entries.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { ShownOnce } from '../../frame/shown-once.js';
import { useTexts } from '../../texts/texts.js';
import type { DestinationsSeen } from '../../told/use-destinations.js';
import { AddWebhookForm } from './add-webhook-form.js';
import { WebhookEntry } from './webhook-entry.js';

/** The other programs that are told of the studio's alerts, and how to add one. */
export function WebhooksSection({
  studioId,
  destinations: { answer, problem, reload },
}: {
  studioId: string;
  destinations: DestinationsSeen;
}) {
  const texts = useTexts();
  const words = texts.channels;
  /** Each until it was copied: none is shown again. */
  const [made, setMade] = useState<readonly { id: string; name: string; secret: string }[]>([]);
  const webhooks = answer?.items.filter(({ kind, state }) => kind === 'webhook' && state !== 'stopped') ?? [];
  return (
    <>
      <Section title={words.webhooks} hint={words.webhooksHint}>
        <ProblemNote problem={problem} />
        {!answer && !problem && <p role="status">{texts.app.loading}</p>}
        {made.map(({ id, name, secret }) => (
          <ShownOnce
            key={id}
            title={words.secretOf(name)}
            label={words.secret}
            value={secret}
            onDone={() => setMade((before) => before.filter((each) => each.id !== id))}
          >
            <p>{words.secretDetail}</p>
          </ShownOnce>
        ))}
        {answer && webhooks.length === 0 && <p>{words.noWebhooks}</p>}
        {webhooks.length > 0 && (
          <Entries label={words.webhooks}>
            {webhooks.map((webhook) => (
              <WebhookEntry key={webhook.id} studioId={studioId} webhook={webhook} onChanged={reload} />
            ))}
          </Entries>
        )}
      </Section>
      <Section title={words.add} hint={words.addHint}>
        <AddWebhookForm
          studioId={studioId}
          onAdded={async ({ destination, name, secret }) => {
            setMade((before) => [...before, { id: destination.id, name, secret }]);
            await reload();
          }}
        />
      </Section>
    </>
  );
}
