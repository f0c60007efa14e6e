import { Textarea } from '@mantine/core';
import { useRef, useState } from 'react';
import type { SessionView } from '../../sessions/session-record.views.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { addComplications } from './records.requests.js';
import { StudioTimeField } from './studio-time-field.js';
import { useStudioTime } from './use-studio-time.js';

/** Adds what was noticed after the session. */
export function ComplicationsForm({
  studioId,
  session,
  timeZone,
  onRecorded,
  onStale,
  onCancel,
}: {
  studioId: string;
  session: SessionView;
  timeZone: string;
  onRecorded: () => Promise<void>;
  onStale: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const [text, setText] = useState('');
  const [now] = useState(() => new Date().toISOString());
  const at = useStudioTime(now, timeZone);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    if (at.instant === undefined) return;
    const added = { complications: text.trim(), version: session.version, occurredAt: at.instant };
    await readAnewIfStale(
      () => addComplications(studioId, session.id, { id: ids.for(added), ...added }),
      onStale,
    );
    await onRecorded();
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.late.addComplications}>
      <Textarea
        label={texts.late.complicationsText}
        description={texts.late.complicationsHint}
        required
        autosize
        minRows={3}
        maxLength={4000}
        value={text}
        error={problem?.faultOf('complications')}
        onChange={(event) => setText(event.currentTarget.value)}
      />
      <StudioTimeField label={texts.late.occurredAt} time={at} error={problem?.faultOf('occurredAt')} />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}
