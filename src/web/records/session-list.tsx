import { Title } from '@mantine/core';
import { memo, useMemo } from 'react';
import { localDay } from '../../identity/local-day.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { SessionListItemView } from '../../sessions/sessions.views.js';
import { MoreButton } from '../frame/more-button.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay, writtenTime } from '../texts/written-dates.js';
import { listSessions, type SessionFilters } from './records.requests.js';
import styles from './session-list.module.css';

/** Sessions below the day on which they start, as many as were asked for; each opens its record. */
export function SessionList({
  standing,
  timeZone,
  filters,
  empty,
  belowSection = false,
}: {
  standing: StandingView;
  timeZone: string;
  filters: SessionFilters;
  /** What is said where there are none. */
  empty?: string;
  /** Whether a section has a heading above the days. */
  belowSection?: boolean;
}) {
  const texts = useTexts();
  const { studioId } = standing;
  const list = usePages(['sessions', studioId, JSON.stringify(filters)], (after) =>
    listSessions(studioId, filters, after),
  );
  const { items } = list;
  const days = useMemo(() => byDay(items ?? [], timeZone), [items, timeZone]);
  return (
    <>
      <ProblemNote problem={list.problem} />
      {list.items === undefined && list.problem === undefined && <p role="status">{texts.app.loading}</p>}
      {list.items?.length === 0 && <p>{empty ?? texts.sessionList.none}</p>}
      {days.map(({ day, sessions }) => {
        const title = day === null ? texts.sessionList.noStart : writtenDay(day, texts.language);
        return (
          <div key={day} className={styles.day}>
            <Title order={belowSection ? 3 : 2} size="h3">
              {title}
            </Title>
            <ul className={styles.sessions} aria-label={texts.sessionList.list(title)}>
              {sessions.map((session) => (
                <SessionRow key={session.id} studioId={studioId} session={session} timeZone={timeZone} />
              ))}
            </ul>
          </div>
        );
      })}
      <MoreButton list={list} />
    </>
  );
}

/** Shown again only when it changed: a list may hold thousands of them. */
const SessionRow = memo(function SessionRow({
  studioId,
  session,
  timeZone,
}: {
  studioId: string;
  session: SessionListItemView;
  timeZone: string;
}) {
  const texts = useTexts();
  const { plannedStart, clientReference, procedureName, visitKind, artistName, state } = session;
  return (
    <li>
      <PageLink
        to={pathOf({ studioId, area: 'records' }, 'sessions', session.id)}
        underline="never"
        className={styles.session ?? ''}
      >
        <span className={styles.time}>
          {plannedStart !== null && writtenTime(plannedStart, texts.language, timeZone)}
        </span>
        <span className={styles.reference}>{clientReference}</span>
        <span className={styles.facts}>
          {[procedureName, texts.visitKinds[visitKind], artistName ?? texts.records.unknownPerson].join(', ')}
        </span>
        <span className={styles.state} data-over={state !== 'planned' && state !== 'in setup'}>
          {texts.sessionStates[state]}
        </span>
      </PageLink>
    </li>
  );
});

/** The list comes in the order of its starts, so each day is one stretch of it. */
function byDay(items: readonly SessionListItemView[], timeZone: string) {
  const days: { day: string | null; sessions: SessionListItemView[] }[] = [];
  for (const session of items) {
    const day = session.plannedStart === null ? null : localDay(session.plannedStart, timeZone);
    const last = days.at(-1);
    if (last && last.day === day) last.sessions.push(session);
    else days.push({ day, sessions: [session] });
  }
  return days;
}
