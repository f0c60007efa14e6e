import { Button } from '@mantine/core';
import { useRef } from 'react';
import { useNavigate } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { SessionListItemView } from '../../sessions/sessions.views.js';
import { Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf, pathOfTray } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { outgoing } from '../offline/outgoing.js';
import { Events } from '../service/events.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { writtenTime } from '../texts/written-dates.js';

/** A session as the day shows it; without network this device knows no names of artists. */
export type DaySession = Pick<
  SessionListItemView,
  'id' | 'clientReference' | 'procedureName' | 'visitKind' | 'state' | 'plannedStart' | 'artistId'
> & { artistName?: string | null };

/** One session of the day, and what can be done for it next. */
export function SessionEntry({
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
    await outgoing.sendOrKeep({ ...event, kind: 'setup', studioId, sessionId: session.id, personId });
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
      isOver={session.state !== 'planned' && session.state !== 'in setup'}
      actions={
        <>
          {session.state === 'planned' && permissions.includes('work the tray') && (
            <Button
              loading={busy}
              aria-label={texts.day.setUpOf(session.clientReference)}
              onClick={() => void run()}
            >
              {texts.day.setUp}
            </Button>
          )}
          {session.state === 'in setup' && (
            <PageLink to={tray} alone>
              {texts.day.toTray}
            </PageLink>
          )}
          {session.state === 'completed' && permissions.includes('trace') && (
            <PageLink to={pathOf({ studioId, area: 'records' }, 'sessions', session.id)} alone>
              {texts.day.toRecord}
            </PageLink>
          )}
        </>
      }
      below={<ProblemNote problem={problem} />}
    >
      <p>{facts.join(', ')}</p>
    </Entry>
  );
}
