import { TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { AlertDestinationView } from '../../../alerts/destinations/alert-destinations.views.js';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { readAnewIfStale } from '../../service/read-anew-if-stale.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { changeDestination } from '../../told/told.requests.js';
import { type Severity, SeverityChoice } from './severity-choice.js';

/** Gives a webhook another name, or another severity from which on it is told. */
export function ChangeWebhookForm({
  studioId,
  webhook,
  onChanged,
  onCancel,
}: {
  studioId: string;
  webhook: AlertDestinationView;
  onChanged: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const words = texts.channels;
  const { id, version } = webhook;
  const formerName = webhook.name ?? '';
  const [name, setName] = useState(formerName);
  const [minimumSeverity, setMinimumSeverity] = useState<Severity>(webhook.minimumSeverity);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const newName = name.trim();
    const change = {
      version,
      ...(newName !== formerName && { name: newName }),
      ...(minimumSeverity !== webhook.minimumSeverity && { minimumSeverity }),
    };
    if (Object.keys(change).length > 1) {
      await readAnewIfStale(
        () => changeDestination(studioId, id, { id: ids.for(change), ...change }),
        onChanged,
      );
      await onChanged();
    }
    onCancel();
  });
  return (
    <Fields onSubmit={() => void run()} label={words.changeOf(formerName)}>
      <TextInput
        label={words.name}
        required
        maxLength={100}
        autoComplete="off"
        value={name}
        error={problem?.faultOf('name')}
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <SeverityChoice value={minimumSeverity} error={undefined} onChange={setMinimumSeverity} />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}
