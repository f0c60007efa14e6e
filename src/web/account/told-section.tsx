import { PageLink } from '../frame/navigation.js';
import { Section } from '../frame/section.js';
import { useRequester } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';

/** The ways to how one is told of alerts, studio by studio. */
export function ToldSection() {
  const words = useTexts().told;
  const { studios } = useRequester();
  const told = studios.filter(({ permissions }) => permissions.includes('be told of alerts'));
  if (told.length === 0) return null;
  return (
    <Section title={words.inAccount} hint={words.inAccountHint}>
      {told.map(({ studioId, studioName }) => (
        <div key={studioId}>
          <PageLink to={`/account/told/${studioId}`} alone>
            {words.ofStudio(studioName)}
          </PageLink>
        </div>
      ))}
    </Section>
  );
}
