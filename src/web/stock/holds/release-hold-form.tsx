import { TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { Events } from '../../service/events.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { releaseHold } from './holds.requests.js';

const longestReason = 300;

/** Ends a hold, with the reason why the thing may be used again. */
export function ReleaseHoldForm({
  studioId,
  holdId,
  about,
  onReleased,
  onCancel,
}: {
  studioId: string;
  holdId: string;
  about: string;
  onReleased: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const [reason, setReason] = useState('');
  const events = useRef(new Events()).current;
  const { run, busy, problem } = useAction(async () => {
    await releaseHold(studioId, holdId, reason, events.of({ holdId, reason }));
    events.renew();
    await onReleased();
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.holds.releaseOf(about)}>
      <TextInput
        label={texts.holds.releaseReason}
        description={texts.holds.releaseHint}
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
