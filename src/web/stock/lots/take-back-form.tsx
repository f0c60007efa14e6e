import { TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { Events } from '../../service/events.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { reverseMovement } from './lots.requests.js';

const longestReason = 300;

/** Takes a movement back by another that names it; both stay. */
export function TakeBackForm({
  studioId,
  movementId,
  about,
  onReversed,
  onCancel,
}: {
  studioId: string;
  movementId: string;
  about: string;
  onReversed: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const [reason, setReason] = useState('');
  const events = useRef(new Events()).current;
  const { run, busy, problem } = useAction(async () => {
    await reverseMovement(studioId, movementId, reason, events.of({ movementId, reason }));
    events.renew();
    await onReversed();
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.history.takeBackOf(about)}>
      <TextInput
        label={texts.history.takeBackReason}
        description={texts.operationFields.reasonHint}
        required
        maxLength={longestReason}
        autoComplete="off"
        value={reason}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}
