import { useRef } from 'react';
import type { SessionView } from '../../sessions/session-record.views.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { useEdits } from '../frame/use-edits.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { type PlanDraft, PlanFields } from './plan-fields.js';
import { changePlan } from './records.requests.js';
import { useStudioTime } from './use-studio-time.js';

/** Changes what is planned. Read anew after somebody else's change, what was written here stays, and only that is sent. */
export function ChangePlanForm({
  studioId,
  session,
  timeZone,
  onChanged,
  onStale,
  onCancel,
}: {
  studioId: string;
  session: SessionView;
  timeZone: string;
  onChanged: () => Promise<void>;
  onStale: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const edits = useEdits<PlanDraft>(draftOf(session));
  const start = useStudioTime(session.plannedStart ?? undefined, timeZone);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    if (start.instant === undefined) return;
    // An artist who left or a procedure no longer offered may stay as they are.
    const { artistId, procedureId, visitKind, bodyPlace, bodyPlaceDetail, follows } = edits.changes;
    const change = {
      version: session.version,
      ...(artistId && { artistId }),
      ...(procedureId && { procedureId }),
      ...(visitKind && { visitKind }),
      ...(bodyPlace && { bodyPlace }),
      ...(bodyPlaceDetail !== undefined && { bodyPlaceDetail: bodyPlaceDetail.trim() || null }),
      ...(start.instant !== session.plannedStart && { plannedStart: start.instant }),
      ...(follows && { followsSessionId: follows === 'none' ? null : follows }),
    };
    await readAnewIfStale(
      () => changePlan(studioId, session.id, { id: ids.for(change), ...change }),
      onStale,
    );
    await onChanged();
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.plan.change}>
      <PlanFields
        studioId={studioId}
        clientId={session.client.id}
        draft={edits.draft}
        present={session.procedure}
        start={start}
        startLabel={texts.plan.start}
        startFault={problem?.faultOf('plannedStart')}
        isNew={false}
        problem={problem}
        onChange={edits.set}
      />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}

function draftOf({ artist, procedure, visitKind, bodyPlace, bodyPlaceDetail }: SessionView): PlanDraft {
  return {
    artistId: artist.id,
    procedureId: procedure.id,
    visitKind,
    bodyPlace,
    bodyPlaceDetail: bodyPlaceDetail ?? '',
    follows: '',
  };
}
