import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { ClientOfSession, useClientOfSession } from './client-of-session.js';
import { emptyPlan, type PlanDraft, PlanFields } from './plan-fields.js';
import { type Plan, planSession } from './records.requests.js';
import { StudioPage } from './studio-page.js';
import { useStudioTime } from './use-studio-time.js';

/** Plans a session: for whom, then what, when and by whom. */
export function PlanPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  return (
    <StudioPage standing={standing} title={texts.plan.title} lead={texts.plan.lead}>
      {(timeZone) => <PlanSession standing={standing} timeZone={timeZone} />}
    </StudioPage>
  );
}

function PlanSession({ standing, timeZone }: { standing: StandingView; timeZone: string }) {
  const texts = useTexts();
  const open = useNavigate();
  const { studioId, personId } = standing;
  const clientId = useClientOfSession();
  const [draft, setDraft] = useState<PlanDraft>({ ...emptyPlan, artistId: personId });
  const start = useStudioTime(undefined, timeZone);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    if (clientId === undefined || start.instant === undefined) return;
    const plan = { ...planOf(draft, start.instant), clientId };
    const planned = await planSession(studioId, { id: ids.for(plan), ...plan });
    await open(pathOf({ studioId, area: 'records' }, 'sessions', planned.id));
  });
  return (
    <>
      <ClientOfSession studioId={studioId} clientId={clientId} />
      <Section title={texts.plan.submit}>
        <Fields onSubmit={() => void run()} label={texts.plan.title}>
          <PlanFields
            studioId={studioId}
            clientId={clientId}
            draft={draft}
            start={start}
            startLabel={texts.plan.start}
            startFault={problem?.faultOf('plannedStart')}
            isNew
            problem={problem}
            onChange={setDraft}
          />
          <ProblemNote problem={problem} />
          {clientId === undefined && (
            <Note kind="plain">
              <p>{texts.plan.clientMissing}</p>
            </Note>
          )}
          <div>
            <Button
              type="submit"
              loading={busy}
              disabled={clientId === undefined || (start.local !== '' && start.instant === undefined)}
            >
              {texts.plan.submit}
            </Button>
          </div>
        </Fields>
      </Section>
    </>
  );
}

/** @throws when the form let something through that it requires */
function planOf(draft: PlanDraft, plannedStart: string): Plan {
  const { artistId, procedureId, visitKind, bodyPlace, bodyPlaceDetail, follows } = draft;
  if (visitKind === '') throw new Error('A plan without a kind of visit.');
  return {
    artistId,
    procedureId,
    visitKind,
    plannedStart,
    ...(bodyPlace !== '' && { bodyPlace }),
    ...(bodyPlaceDetail.trim() !== '' && { bodyPlaceDetail: bodyPlaceDetail.trim() }),
    ...(follows !== '' && { followsSessionId: follows === 'none' ? null : follows }),
  };
}
