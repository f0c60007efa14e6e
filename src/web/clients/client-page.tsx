import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { pathOf } from '../frame/places.js';
import { Section } from '../frame/section.js';
import { listSessions } from '../records/records.requests.js';
import { SessionList } from '../records/session-list.js';
import { StudioPage } from '../records/studio-page.js';
import { isProblem } from '../service/problem.js';
import { useAnswer } from '../service/use-answer.js';
import { useForgetAnswers } from '../service/use-forget-answers.js';
import { useTexts } from '../texts/texts.js';
import { AccessesSection } from './accesses-section.js';
import { ClaimsSection } from './claims-section.js';
import { showClient } from './clients.requests.js';
import { ErasureSection } from './erasure-section.js';
import { HandOutSection } from './hand-out-section.js';
import { LotsSection } from './lots-section.js';
import { TouchUpsSection } from './touch-ups-section.js';
import { WhoSection } from './who-section.js';

/** One client: who they are, for whoever may know; what was done; and their rights. */
export function ClientPage({ standing, id: clientId }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const { studioId, permissions } = standing;
  const forget = useForgetAnswers();
  const may = (permission: (typeof permissions)[number]) => permissions.includes(permission);
  const shown = useAnswer(['client', studioId, clientId], async () =>
    may('read clients') ? showClient(studioId, clientId) : null,
  );
  // Who is not shown clients learns the reference from their sessions.
  const first = useAnswer(['first session', studioId, clientId], async () =>
    may('read clients') ? null : listSessions(studioId, { clientId }, undefined, 1),
  );
  const reference = shown.answer?.reference ?? first.answer?.items[0]?.clientReference;
  if (isProblem(shown.problem, 'not-found')) return <NoSuchPage />;
  const isErased = shown.answer != null && shown.answer.erasedAt !== null;
  return (
    <StudioPage
      standing={standing}
      title={reference === undefined ? texts.client.noReference : texts.client.title(reference)}
      lead={may('read clients') ? texts.client.whoHint : texts.client.whoNotShown}
    >
      {(timeZone) => (
        <>
          {may('read clients') && (
            <WhoSection
              standing={standing}
              client={shown.answer ?? undefined}
              problem={shown.problem}
              timeZone={timeZone}
              onChanged={shown.reload}
            />
          )}
          <Section title={texts.client.sessions}>
            {may('plan sessions') && !isErased && (
              <p>
                <PageLink
                  to={`${pathOf({ studioId, area: 'records' }, 'sessions', 'plan')}?client=${clientId}`}
                  alone
                >
                  {texts.client.plan}
                </PageLink>
              </p>
            )}
            <SessionList
              standing={standing}
              timeZone={timeZone}
              filters={{ clientId }}
              empty={texts.client.noSessions}
              belowSection
            />
          </Section>
          <TouchUpsSection studioId={studioId} clientId={clientId} timeZone={timeZone} />
          <LotsSection studioId={studioId} clientId={clientId} />
          {may('hand out client data') && (
            <>
              <ClaimsSection
                studioId={studioId}
                clientId={clientId}
                timeZone={timeZone}
                isErased={isErased}
              />
              <HandOutSection studioId={studioId} clientId={clientId} reference={reference ?? ''} />
            </>
          )}
          {may('hand out client data') && (
            <ErasureSection
              studioId={studioId}
              clientId={clientId}
              reference={reference ?? ''}
              timeZone={timeZone}
              mayAsk={may('erase clients') && !isErased}
              onAnswered={forget}
            />
          )}
          {may('read the audit log') && (
            <AccessesSection studioId={studioId} clientId={clientId} timeZone={timeZone} />
          )}
        </>
      )}
    </StudioPage>
  );
}
