import { Button } from '@mantine/core';
import { useState } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { Page } from '../frame/page.js';
import { pathOf, pathOfTray } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { isProblem } from '../service/problem.js';
import { usePeople } from '../service/studio-answers.js';
import { useAnswer } from '../service/use-answer.js';
import { showKitList } from '../settings/settings.requests.js';
import { useTexts } from '../texts/texts.js';
import { LateRecords } from './late-records.js';
import { showRecord, showSession } from './records.requests.js';
import styles from './session-page.module.css';
import { SessionPlan } from './session-plan.js';
import { SessionSheet } from './session-sheet.js';

/** One session: what is recorded of it, as it is printed, and what can still be done about it. */
export function SessionPage({ standing, id: sessionId }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const { studioId, studioName, permissions } = standing;
  const record = useAnswer(['session record', studioId, sessionId], () => showRecord(studioId, sessionId));
  const shown = useAnswer(['session', studioId, sessionId], () => showSession(studioId, sessionId));
  const people = usePeople(studioId);
  const session = shown.answer;
  const kit = useAnswer(
    ['kit list', studioId, session?.procedure.id ?? '', session?.artist.id ?? ''],
    async () => (session ? showKitList(studioId, session.procedure.id, session.artist.id) : null),
  );
  const [showsName, setShowsName] = useState(false);
  const reload = async () => {
    await Promise.all([record.reload(), shown.reload()]);
  };
  if (isProblem(shown.problem, 'not-found')) return <NoSuchPage />;
  const isOpen = session?.state === 'planned' || session?.state === 'in setup';
  return (
    <Page above={studioName} title={texts.session.title}>
      <ProblemNote problem={shown.problem ?? record.problem ?? people.problem ?? kit.problem} />
      {(!session || !record.answer) && !shown.problem && <p role="status">{texts.app.loading}</p>}
      {session && record.answer && (
        <>
          <div className={styles.actions}>
            <Button onClick={() => window.print()}>{texts.session.print}</Button>
            {session.client.name !== null && (
              <Button variant="default" aria-pressed={showsName} onClick={() => setShowsName(!showsName)}>
                {showsName ? texts.session.hideName : texts.session.showName}
              </Button>
            )}
            {session.state === 'in setup' && (
              <PageLink to={pathOfTray({ studioId, sessionId })} alone>
                {texts.session.toTray}
              </PageLink>
            )}
            <PageLink to={pathOf({ studioId, area: 'records' }, 'clients', session.client.id)} alone>
              {texts.client.title(session.client.reference)}
            </PageLink>
          </div>
          <SessionSheet
            standing={standing}
            record={record.answer}
            session={session}
            kit={kit.answer?.items ?? []}
            people={people.answer ?? []}
            showsName={showsName}
          />
          {isOpen && permissions.includes('plan sessions') && (
            <SessionPlan
              studioId={studioId}
              session={session}
              timeZone={record.answer.timeZone}
              onChanged={reload}
            />
          )}
          {session.state === 'completed' && permissions.includes('record late') && (
            <LateRecords
              studioId={studioId}
              session={session}
              timeZone={record.answer.timeZone}
              people={people.answer ?? []}
              onRecorded={reload}
            />
          )}
        </>
      )}
    </Page>
  );
}
