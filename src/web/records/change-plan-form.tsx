import { useRef, useState } from 'react';
import type { SessionView } from '../../sessions/session-record.views.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { isProblem } from '../service/problem.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { type PlanDraft, PlanFields } from './plan-fields.js';
import { changePlan } from './records.requests.js';
import { useStudioTime } from './use-studio-time.js';

/** Changes what is planned. Made anew (by its key) when somebody else has changed it meanwhile. */
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
  const [draft, setDraft] = useState(() => draftOf(session));
  const start = useStudioTime(session.plannedStart ?? undefined, timeZone);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const { visitKind, bodyPlace, follows } = draft;
    if (visitKind === '' || bodyPlace === '' || start.instant === undefined) return;
    const detail = draft.bodyPlaceDetail.trim() === '' ? null : draft.bodyPlaceDetail.trim();
    // Only what was changed: an artist who left or a procedure no longer offered may stay as they are.
    const change = {
      version: session.version,
      ...(draft.artistId !== session.artist.id && { artistId: draft.artistId }),
      ...(draft.procedureId !== session.procedure.id && { procedureId: draft.procedureId }),
      ...(visitKind !== session.visitKind && { visitKind }),
      ...(bodyPlace !== session.bodyPlace && { bodyPlace }),
      ...(detail !== session.bodyPlaceDetail && { bodyPlaceDetail: detail }),
      ...(start.instant !== session.plannedStart && { plannedStart: start.instant }),
      ...(follows !== '' && { followsSessionId: follows === 'none' ? null : follows }),
    };
    try {
      await changePlan(studioId, session.id, { id: ids.for(change), ...change });
    } catch (error) {
      if (isProblem(error, 'stale-version')) await onStale();
      throw error;
    }
    await onChanged();
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.plan.change}>
      <PlanFields
        studioId={studioId}
        clientId={session.client.id}
        draft={draft}
        present={session.procedure}
        start={start}
        startLabel={texts.plan.start}
        startFault={problem?.faultOf('plannedStart')}
        isNew={false}
        problem={problem}
        onChange={setDraft}
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
