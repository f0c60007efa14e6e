import { Button } from '@mantine/core';
import { useRef } from 'react';
import { useNavigate } from 'react-router';
import { localDay } from '../../identity/local-day.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { DayFactsView } from '../../sessions/day-facts.views.js';
import type { SessionListItemView } from '../../sessions/sessions.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { Page } from '../frame/page.js';
import { pathOfTray } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { outgoing, useOutgoing } from '../offline/outgoing.js';
import { withWaiting } from '../offline/tray-on-device.js';
import { useDayFacts } from '../offline/use-day-facts.js';
import { useConnection } from '../service/connection.js';
import { Events } from '../service/events.js';
import { isProblem } from '../service/problem.js';
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
  const facts = useDayFacts(standing);
  const timeZone = studio.answer?.timeZone ?? facts?.timeZone;
  return (
    <Page above={studioName} title={texts.day.title} lead={texts.day.lead}>
      {timeZone === undefined && <ProblemNote problem={studio.problem} />}
      {timeZone !== undefined && <Day standing={standing} timeZone={timeZone} facts={facts} />}
      {standing.permissions.includes('work the tray') && <WalkInForm standing={standing} />}
    </Page>
  );
}

type DaySession = Pick<
  SessionListItemView,
  'id' | 'clientReference' | 'procedureName' | 'visitKind' | 'state' | 'plannedStart'
> & { artistName?: string | null };

function Day({
  standing,
  timeZone,
  facts,
}: {
  standing: StandingView;
  timeZone: string;
  /** What this device knows of the day. */
  facts: DayFactsView | undefined;
}) {
  const texts = useTexts();
  const { studioId } = standing;
  const today = localDay(new Date().toISOString(), timeZone);
  const ofDay = useAnswer(['sessions of day', studioId, today], () => listSessionsOfDay(studioId, today));
  const inSetup = useAnswer(['sessions in setup', studioId], () => listSessionsInSetup(studioId));
  const { isReached } = useConnection();
  const { waiting } = useOutgoing();
  const here = isReached ? undefined : facts && withWaiting(facts, waiting).sessions;
  const sessions: readonly DaySession[] | undefined = here ?? ofDay.answer;
  const known = new Set(sessions?.map(({ id }) => id));
  const earlier = here ? [] : (inSetup.answer?.filter(({ id }) => !known.has(id)) ?? []);
  const entryOf = (session: DaySession) => (
    <SessionEntry key={session.id} standing={standing} session={session} timeZone={timeZone} />
  );
  return (
    <>
      <Section title={writtenDay(today, texts.language)} hint={texts.day.listHint}>
        <ProblemNote problem={here ? undefined : ofDay.problem} />
        {sessions === undefined && ofDay.problem === undefined && <p>{texts.app.loading}</p>}
        {sessions?.length === 0 && <p>{texts.day.none}</p>}
        {sessions && sessions.length > 0 && <Entries label={texts.day.list}>{sessions.map(entryOf)}</Entries>}
      </Section>
      <ProblemNote problem={here ? undefined : inSetup.problem} />
      {earlier.length > 0 && (
        <Section title={texts.day.earlier} hint={texts.day.earlierHint}>
          <Entries label={texts.day.earlier}>{earlier.map(entryOf)}</Entries>
        </Section>
      )}
    </>
  );
}

function SessionEntry({
  standing: { studioId, personId, permissions },
  session,
  timeZone,
}: {
  standing: StandingView;
  session: DaySession;
  timeZone: string;
}) {
  const texts = useTexts();
  const open = useNavigate();
  const events = useRef(new Events()).current;
  const tray = pathOfTray({ studioId, sessionId: session.id });
  const { run, busy, problem } = useAction(async () => {
    const event = events.of({ setup: session.id });
    try {
      await startSetup(studioId, session.id, event);
    } catch (error) {
      if (!isProblem(error, 'unreachable')) throw error;
      // It may or may not have arrived: sent again it counts once.
      outgoing.add({ ...event, kind: 'setup', studioId, sessionId: session.id, personId });
    }
    events.renew();
    await open(tray);
  });
  const facts = [
    session.plannedStart !== null && writtenTime(session.plannedStart, texts.language, timeZone),
    session.procedureName,
    texts.visitKinds[session.visitKind],
    session.artistName,
  ].filter((fact) => typeof fact === 'string');
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
