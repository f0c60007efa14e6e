import { Button } from '@mantine/core';
import { useRef } from 'react';
import { useNavigate } from 'react-router';
import { localDay } from '../../identity/local-day.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { SessionListItemView } from '../../sessions/sessions.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { Page } from '../frame/page.js';
import { pathOfTray } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { Events } from '../service/events.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay, writtenTime } from '../texts/written-dates.js';
import { listSessionsInSetup, listSessionsOfDay, showStudio, startSetup } from './sessions.requests.js';
import { WalkInForm } from './walk-in-form.js';

/** The day's sessions, by the client's reference: a name is nothing to be read from the other end of the room. */
export function DayPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioId, studioName } = standing;
  const studio = useAnswer(['studio', studioId], () => showStudio(studioId));
  const timeZone = studio.answer?.timeZone;
  return (
    <Page above={studioName} title={texts.day.title} lead={texts.day.lead}>
      <ProblemNote problem={studio.problem} />
      {timeZone !== undefined && <Day standing={standing} timeZone={timeZone} />}
      {standing.permissions.includes('work the tray') && <WalkInForm standing={standing} />}
    </Page>
  );
}

function Day({ standing, timeZone }: { standing: StandingView; timeZone: string }) {
  const texts = useTexts();
  const { studioId } = standing;
  const today = localDay(new Date().toISOString(), timeZone);
  const ofDay = useAnswer(['sessions of day', studioId, today], () => listSessionsOfDay(studioId, today));
  const inSetup = useAnswer(['sessions in setup', studioId], () => listSessionsInSetup(studioId));
  const known = new Set(ofDay.answer?.map(({ id }) => id));
  const earlier = inSetup.answer?.filter(({ id }) => !known.has(id)) ?? [];
  const entryOf = (session: SessionListItemView) => (
    <SessionEntry key={session.id} standing={standing} session={session} timeZone={timeZone} />
  );
  return (
    <>
      <Section title={writtenDay(today, texts.language)} hint={texts.day.listHint}>
        <ProblemNote problem={ofDay.problem} />
        {ofDay.answer?.length === 0 && <p>{texts.day.none}</p>}
        {ofDay.answer && ofDay.answer.length > 0 && (
          <Entries label={texts.day.list}>{ofDay.answer.map(entryOf)}</Entries>
        )}
      </Section>
      <ProblemNote problem={inSetup.problem} />
      {earlier.length > 0 && (
        <Section title={texts.day.earlier} hint={texts.day.earlierHint}>
          <Entries label={texts.day.earlier}>{earlier.map(entryOf)}</Entries>
        </Section>
      )}
    </>
  );
}

function SessionEntry({
  standing: { studioId, permissions },
  session,
  timeZone,
}: {
  standing: StandingView;
  session: SessionListItemView;
  timeZone: string;
}) {
  const texts = useTexts();
  const open = useNavigate();
  const events = useRef(new Events()).current;
  const tray = pathOfTray({ studioId, sessionId: session.id });
  const { run, busy, problem } = useAction(async () => {
    await startSetup(studioId, session.id, events.of({ setup: session.id }));
    events.renew();
    await open(tray);
  });
  const facts = [
    session.plannedStart !== null && writtenTime(session.plannedStart, texts.language, timeZone),
    session.procedureName,
    texts.visitKinds[session.visitKind],
    session.artistName,
  ].filter((fact) => fact !== false && fact !== null);
  return (
    <Entry
      name={session.clientReference}
      mark={texts.sessionStates[session.state]}
      actions={
        session.state === 'planned' && permissions.includes('work the tray') ? (
          <Button
            loading={busy}
            aria-label={texts.day.setUpOf(session.clientReference)}
            onClick={() => void run()}
          >
            {texts.day.setUp}
          </Button>
        ) : (
          session.state === 'in setup' && (
            <PageLink to={tray} alone>
              {texts.day.toTray}
            </PageLink>
          )
        )
      }
      below={<ProblemNote problem={problem} />}
    >
      <p>{facts.join(', ')}</p>
    </Entry>
  );
}
