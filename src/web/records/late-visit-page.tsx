import { Button, Checkbox, Radio, Stack, Textarea } from '@mantine/core';
import { useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Choice } from '../frame/choice.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { RequestIds } from '../service/request-ids.js';
import { usePeople } from '../service/studio-answers.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { ClientOfSession, useClientOfSession } from './client-of-session.js';
import { emptyPlan, type PlanDraft, PlanFields } from './plan-fields.js';
import { recordLateVisit } from './records.requests.js';
import { StudioPage } from './studio-page.js';
import { useStudioTime } from './use-studio-time.js';

/** A visit that took place and is recorded afterwards: what was used is added on its own page next. */
export function LateVisitPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  return (
    <StudioPage standing={standing} title={texts.lateVisit.title} lead={texts.lateVisit.lead}>
      {(timeZone) => <LateVisit standing={standing} timeZone={timeZone} />}
    </StudioPage>
  );
}

function LateVisit({ standing, timeZone }: { standing: StandingView; timeZone: string }) {
  const texts = useTexts();
  const open = useNavigate();
  const { studioId, personId } = standing;
  const clientId = useClientOfSession();
  const people = usePeople(studioId);
  const [source, setSource] = useState<'paper' | 'late'>('paper');
  const [draft, setDraft] = useState<PlanDraft>({ ...emptyPlan, artistId: personId });
  const [complications, setComplications] = useState('');
  const [none, setNone] = useState(false);
  const [signedBy, setSignedBy] = useState(personId);
  const at = useStudioTime(undefined, timeZone);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const { artistId, procedureId, visitKind, bodyPlace, bodyPlaceDetail, follows } = draft;
    if (clientId === undefined || at.instant === undefined || visitKind === '') return;
    const said = complications.trim();
    const visit = {
      source,
      occurredAt: at.instant,
      clientId,
      artistId,
      procedureId,
      visitKind,
      ...(bodyPlace !== '' && { bodyPlace }),
      ...(bodyPlaceDetail.trim() !== '' && { bodyPlaceDetail: bodyPlaceDetail.trim() }),
      ...(follows !== '' && { followsSessionId: follows }),
      uses: [],
      // Not known unless somebody says that there were none.
      ...(said !== '' ? { complications: said } : none && { complications: null }),
      signedBy,
    };
    const { id } = await recordLateVisit(studioId, { id: ids.for(visit), ...visit });
    await open(pathOf({ studioId, area: 'records' }, 'sessions', id));
  });
  return (
    <>
      <ClientOfSession studioId={studioId} clientId={clientId} />
      <Section title={texts.lateVisit.visit}>
        <Fields onSubmit={() => void run()} label={texts.lateVisit.title}>
          <Radio.Group
            label={texts.lateVisit.source}
            value={source}
            onChange={(chosen) => setSource(chosen as 'paper' | 'late')}
          >
            <Stack gap="sm" mt="xs">
              <Radio value="paper" label={texts.lateVisit.paper} />
              <Radio value="late" label={texts.lateVisit.memory} />
            </Stack>
          </Radio.Group>
          <PlanFields
            studioId={studioId}
            clientId={clientId}
            draft={draft}
            start={at}
            startLabel={texts.lateVisit.when}
            startFault={problem?.faultOf('occurredAt')}
            isNew
            problem={problem}
            onChange={setDraft}
          />
          <Textarea
            label={texts.session.complications}
            autosize
            minRows={2}
            maxLength={4000}
            disabled={none}
            value={none ? '' : complications}
            error={problem?.faultOf('complications')}
            onChange={(event) => setComplications(event.currentTarget.value)}
          />
          <Checkbox
            label={texts.lateVisit.noComplications}
            description={texts.lateVisit.noComplicationsHint}
            checked={none}
            onChange={(event) => setNone(event.currentTarget.checked)}
          />
          <Choice
            label={texts.lateVisit.signedBy}
            required
            value={signedBy}
            none={texts.plan.choose}
            error={problem?.faultOf('signedBy')}
            choices={(people.answer ?? []).map(({ id, name }) => ({
              value: id,
              label: name ?? texts.records.unknownPerson,
            }))}
            onChange={setSignedBy}
          />
          <ProblemNote problem={problem ?? people.problem} />
          {clientId === undefined && (
            <Note kind="plain">
              <p>{texts.plan.clientMissing}</p>
            </Note>
          )}
          <div>
            <Button
              type="submit"
              loading={busy}
              disabled={clientId === undefined || (at.local !== '' && at.instant === undefined)}
            >
              {texts.lateVisit.submit}
            </Button>
          </div>
        </Fields>
      </Section>
    </>
  );
}
