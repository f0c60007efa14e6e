import { useTexts } from '../texts/texts.js';
import { PageLink } from './navigation.js';
import { Page } from './page.js';

/** For an address that leads nowhere, or nowhere for whoever is signed in. */
export function NoSuchPage() {
  const texts = useTexts();
  return (
    <Page title={texts.app.noSuchPage} lead={texts.app.noSuchPageDetail}>
      <PageLink to="/" alone>
        {texts.app.toStart}
      </PageLink>
    </Page>
  );
}
