import { Button, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { MadeWebhookView } from '../../../alerts/destinations/alert-destinations.views.js';
import { Fields } from '../../frame/fields.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { addWebhook } from './channels.requests.js';
import { type Severity, SeverityChoice } from './severity-choice.js';

/** Adds a webhook; its secret is in the answer and never again. */
export function AddWebhookForm({
  studioId,
  onAdded,
}: {
  studioId: string;
  onAdded: (made: MadeWebhookView & { name: string }) => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.channels;
  const [name, setName] = useState('');
  const [url, setUrl] = useState('');
  const [minimumSeverity, setMinimumSeverity] = useState<Severity>('warning');
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const webhook = { name: name.trim(), url: url.trim(), minimumSeverity };
    const made = await addWebhook(studioId, { id: ids.for(webhook), ...webhook });
    ids.renew();
    setName('');
    setUrl('');
    await onAdded({ ...made, name: webhook.name });
  });
  const urlFault = problem?.faultOf('url') ?? problem?.detailOf('already-exists');
  const nameFault = problem?.faultOf('name');
  return (
    <Fields onSubmit={() => void run()} label={words.add}>
      <TextInput
        label={words.name}
        description={words.nameHint}
        required
        maxLength={100}
        autoComplete="off"
        value={name}
        error={nameFault}
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <TextInput
        // Left to the service to judge, which says what is wrong in words.
        inputMode="url"
        label={words.url}
        description={words.urlHint}
        required
        maxLength={2_000}
        autoComplete="off"
        value={url}
        error={urlFault}
        onChange={(event) => setUrl(event.currentTarget.value)}
      />
      <SeverityChoice
        value={minimumSeverity}
        error={problem?.faultOf('minimumSeverity')}
        onChange={setMinimumSeverity}
      />
      {urlFault === undefined && nameFault === undefined && <ProblemNote problem={problem} />}
      <div>
        <Button type="submit" loading={busy}>
          {words.add}
        </Button>
      </div>
    </Fields>
  );
}
