import { Stack } from '@mantine/core';
import { useParams } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { Note } from '../frame/note.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useStudio } from '../service/studio-answers.js';
import { useAnswer } from '../service/use-answer.js';
import { useRequester, useStanding } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { BrowsersSection } from './browsers-section.js';
import { CalendarSection } from './calendar-section.js';
import { LiveSection } from './live-section.js';
import { MailSection } from './mail-section.js';
import { PreferenceForm } from './preference-form.js';
import { showOwnPreference } from './told.requests.js';
import { useDestinations } from './use-destinations.js';

/** How whoever is signed in is told of the alerts of one studio. */
export function ToldPage() {
  const texts = useTexts();
  const { studioId = '' } = useParams();
  const standing = useStanding(studioId);
  const { signInName } = useRequester();
  if (signInName === null) return <Page title={texts.app.notYours} lead={texts.start.onTablet} />;
  if (!standing) return <NoSuchPage />;
  return <ToldOf key={studioId} standing={standing} />;
}

function ToldOf({ standing: { studioId, studioName, personId } }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.told;
  const studio = useStudio(studioId);
  const preference = useAnswer(['alert preference', studioId], () => showOwnPreference(studioId));
  const destinations = useDestinations(studioId, 'own');
  const leads = destinations.answer?.items.some(
    ({ kind, state }) => kind !== 'webhook' && state === 'active',
  );
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.what} hint={words.whatHint}>
        <Stack gap="lg">
          <ProblemNote problem={preference.problem ?? studio.problem} />
          {!preference.answer && !preference.problem && <p role="status">{texts.app.loading}</p>}
          {leads === false && (
            <Note kind="plain">
              <p>{words.nothingLeads}</p>
            </Note>
          )}
          {preference.answer?.isDefault && (
            <Note kind="plain">
              <p>{words.isAssumed}</p>
            </Note>
          )}
          {preference.answer && (
            <PreferenceForm
              studioId={studioId}
              preference={preference.answer}
              morning={studio.answer?.morning ?? ''}
              reload={preference.reload}
            />
          )}
        </Stack>
      </Section>
      <MailSection studioId={studioId} personId={personId} destinations={destinations} />
      <BrowsersSection studioId={studioId} destinations={destinations} />
      <CalendarSection studioId={studioId} />
      <LiveSection studioId={studioId} />
    </Page>
  );
}
