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
  const [made, setMade] = useState<{ name: string; secret: string }>();
  const webhooks = answer?.items.filter(({ kind, state }) => kind === 'webhook' && state !== 'stopped') ?? [];
  return (
    <>
      <Section title={words.webhooks} hint={words.webhooksHint}>
        <ProblemNote problem={problem} />
        {!answer && !problem && <p role="status">{texts.app.loading}</p>}
        {made && (
          <ShownOnce
            title={words.secretOf(made.name)}
            label={words.secret}
            value={made.secret}
            onDone={() => setMade(undefined)}
          >
            <p>{words.secretDetail}</p>
          </ShownOnce>
        )}
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
          onAdded={async (webhook) => {
            setMade(webhook);
            await reload();
          }}
        />
      </Section>
    </>
  );
}
