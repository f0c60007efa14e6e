import { Page } from '../frame/page.js';
import { useRequester } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { PasswordSection } from './password-section.js';
import { SignInsSection } from './sign-ins-section.js';

/** What somebody sees and changes of their own account. */
export function AccountPage() {
  const texts = useTexts();
  const { signInName } = useRequester();
  if (signInName === null) return <Page title={texts.app.notYours} lead={texts.start.onTablet} />;
  return (
    <Page title={texts.account.title} lead={texts.account.lead(signInName)}>
      <SignInsSection />
      <PasswordSection signInName={signInName} />
    </Page>
  );
}
