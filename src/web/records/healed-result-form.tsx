import { Textarea, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { localDay } from '../../identity/local-day.js';
import type { SessionView } from '../../sessions/session-record.views.js';
import { Choice } from '../frame/choice.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { listSessions, recordHealedResult } from './records.requests.js';
import { StudioTimeField } from './studio-time-field.js';
import { useStudioTime } from './use-studio-time.js';

/** Records how the colour healed, or corrects what was recorded of it. */
export function HealedResultForm({
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
  const before = session.healedResult;
  const [percent, setPercent] = useState(before === null ? '' : String(before.retainedColourPercent));
  const [note, setNote] = useState(before?.note ?? '');
  const [seenAt, setSeenAt] = useState(before?.seenAtSessionId ?? '');
  const [now] = useState(() => before?.occurredAt ?? new Date().toISOString());
  const at = useStudioTime(now, timeZone);
  const clientId = session.client.id;
  const visits = useAnswer(['sessions of client', studioId, clientId], () =>
    listSessions(studioId, { clientId }, undefined, 200),
  );
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    if (at.instant === undefined) return;
    const result = {
      retainedColourPercent: Number(percent),
      note: note.trim() === '' ? null : note.trim(),
      seenAtSessionId: seenAt === '' ? null : seenAt,
      occurredAt: at.instant,
      ...(before !== null && { version: session.version }),
    };
    await readAnewIfStale(
      () => recordHealedResult(studioId, session.id, { id: ids.for(result), ...result }),
      onStale,
    );
    await onRecorded();
  });
  const choices = (visits.answer?.items ?? [])
    .filter(({ id }) => id !== session.id)
    .map(({ id, plannedStart, procedureName, visitKind }) => ({
      value: id,
      label: texts.plan.followed(
        plannedStart === null ? '' : writtenDay(localDay(plannedStart, timeZone), texts.language),
        procedureName,
        texts.visitKinds[visitKind],
      ),
    }));
  return (
    <Fields onSubmit={() => void run()} label={texts.late.recordHealed}>
      <TextInput
        type="number"
        inputMode="numeric"
        min={0}
        max={100}
        step={1}
        label={texts.late.retained}
        description={texts.late.healedHint}
        required
        value={percent}
        error={problem?.faultOf('retainedColourPercent')}
        onChange={(event) => setPercent(event.currentTarget.value)}
      />
      <Textarea
        label={texts.late.note}
        autosize
        minRows={2}
        maxLength={2000}
        value={note}
        error={problem?.faultOf('note')}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
      {choices.length > 0 && (
        <Choice
          label={texts.late.seenAt}
          value={seenAt}
          none={texts.late.seenAtNone}
          choices={choices}
          onChange={setSeenAt}
        />
      )}
      <StudioTimeField label={texts.late.occurredAt} time={at} error={problem?.faultOf('occurredAt')} />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}
