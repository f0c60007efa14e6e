import { PageLink } from '../frame/navigation.js';
import { Page } from '../frame/page.js';
import { Section } from '../frame/section.js';
import { useRequester } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { PasskeysSection } from './passkeys-section.js';
import { PasswordSection } from './password-section.js';
import { PinSection } from './pin-section.js';
import { SignInsSection } from './sign-ins-section.js';
import { ToldSection } from './told-section.js';

/** What somebody sees and changes of their own account. */
export function AccountPage() {
  const texts = useTexts();
  const { signInName, hasPassword, studios } = useRequester();
  if (signInName === null) return <Page title={texts.app.notYours} lead={texts.start.onTablet} />;
  const worksOnTablets = studios.filter(({ permissions }) => permissions.includes('work the tray'));
  return (
    <Page title={texts.account.title} lead={texts.account.lead(signInName)}>
      <ToldSection />
      <SignInsSection />
      <PasskeysSection />
      <PasswordSection signInName={signInName} hasPassword={hasPassword === true} />
      <Section title={texts.account.work} hint={texts.account.workHint}>
        <PageLink to="/start" alone>
          {texts.account.toWork}
        </PageLink>
      </Section>
      {worksOnTablets.map((standing) => (
        <PinSection key={standing.studioId} standing={standing} />
      ))}
    </Page>
  );
}
