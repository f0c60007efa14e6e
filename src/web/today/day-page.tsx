import { localDay } from '../../identity/local-day.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { DayFactsView } from '../../sessions/day-facts.views.js';
import { AlertEntry } from '../alerts/alert-entry.js';
import { listAlerts, mostAlerts } from '../alerts/alerts.requests.js';
import { Entries } from '../frame/entries.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useDayFacts } from '../offline/use-day-facts.js';
import { useConnection } from '../service/connection.js';
import { useStudio } from '../service/studio-answers.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { type DayPart, partOfAlert, partOfSession, parts, worstFirst } from './day-plan.js';
import { FirstSteps, useFirstSteps } from './first-steps.js';
import { SessionEntry } from './session-entry.js';
import { useSessionsOfDay } from './use-sessions-of-day.js';
import { WalkInForm } from './walk-in-form.js';

/**
 * What one person has to do: their sessions and what has to be seen to, in one list; who works alone finds all of it
 * there. Clients stand here by reference: a name is nothing to be read from the other end of the room.
 */
export function DayPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioId, studioName } = standing;
  const studio = useStudio(studioId);
  const facts = useDayFacts(standing);
  const timeZone = studio.answer?.timeZone ?? facts?.timeZone;
  const today = timeZone && localDay(new Date().toISOString(), timeZone);
  return (
    <Page
      above={studioName}
      title={texts.day.title}
      lead={today ? texts.day.leadOf(writtenDay(today, texts.language)) : texts.day.lead}
    >
      {timeZone === undefined && <ProblemNote problem={studio.problem} />}
      {today && timeZone && <Day standing={standing} today={today} timeZone={timeZone} facts={facts} />}
    </Page>
  );
}

function Day({
  standing,
  today,
  timeZone,
  facts,
}: {
  standing: StandingView;
  today: string;
  timeZone: string;
  /** What this device knows of the day. */
  facts: DayFactsView | undefined;
}) {
  const texts = useTexts();
  const { studioId, personId, role } = standing;
  const { isReached } = useConnection();
  const { sessions, problem } = useSessionsOfDay(studioId, today, facts);
  const alerts = useAnswer(['alerts', studioId], () => listAlerts(studioId));
  const now = new Date().toISOString();
  const start = useFirstSteps(standing);
  // Shown at once and whole, so that nothing jumps under a finger.
  const isWhole =
    start.isSettled &&
    sessions !== undefined &&
    (alerts.answer !== undefined || alerts.problem !== undefined);

  const sessionsOf = (part: DayPart) =>
    sessions?.filter((session) => partOfSession(session, personId, now) === part) ?? [];
  const alertsOf = (part: DayPart) =>
    [...(alerts.answer?.items ?? [])]
      .filter((alert) => partOfAlert(alert, personId) === part)
      .sort(worstFirst);
  const entriesOf = (part: DayPart) => {
    const ofSessions = sessionsOf(part).map((session) => (
      <SessionEntry key={session.id} standing={standing} session={session} timeZone={timeZone} />
    ));
    const ofAlerts = alertsOf(part).map((alert) => (
      <AlertEntry key={alert.id} standing={standing} alert={alert} />
    ));
    // Whoever treats clients looks for the next one first; whoever keeps the stock for what is missing.
    return role === 'artist' ? [...ofSessions, ...ofAlerts] : [...ofAlerts, ...ofSessions];
  };

  return (
    <>
      <ProblemNote problem={problem ?? (isReached ? alerts.problem : undefined)} />
      {!isWhole && problem === undefined && <p>{texts.app.loading}</p>}
      {isWhole && <FirstSteps standing={standing} found={start.found} />}
      {isWhole &&
        parts.map((part) => {
          const entries = entriesOf(part);
          if (entries.length === 0 && part !== 'now') return null;
          return (
            <Section key={part} title={texts.day.parts[part]} hint={texts.day.partHints[part]}>
              {entries.length === 0 ? (
                <p>{texts.day.none}</p>
              ) : (
                <Entries label={texts.day.parts[part]}>{entries}</Entries>
              )}
            </Section>
          );
        })}
      {alerts.answer?.next != null && <p>{texts.alerts.more(mostAlerts)}</p>}
      {isWhole && standing.permissions.includes('work the tray') && <WalkInForm standing={standing} />}
    </>
  );
}
