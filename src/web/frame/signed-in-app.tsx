import { Button } from '@mantine/core';
import { useEffect } from 'react';
import { AccessPage } from '../access/access-page.js';
import { AccountPage } from '../account/account-page.js';
import { SignedInContext } from '../sign-in/requester.js';
import { useSession } from '../sign-in/use-session.js';
import { StartPage } from '../start/start-page.js';
import { SignedOutPage } from '../tablet/signed-out-page.js';
import { useTexts } from '../texts/texts.js';
import { Frame } from './frame.js';
import { openPage, PageLink } from './navigation.js';
import { Page } from './page.js';
import { placeOf } from './pages-of-role.js';
import { ProblemNote } from './problem-note.js';
import { Threshold } from './threshold.js';

/**
 * The pages for whoever is signed in. When nobody is (any more), signing in takes the page's place, and the page is there
 * again afterwards: its path stays.
 */
export function SignedInApp({ path }: { path: string }) {
  const texts = useTexts();
  const { session, refresh } = useSession(path);
  const leavesSignIn = session.state === 'signed in' && path === '/sign-in';
  useEffect(() => {
    if (leavesSignIn) openPage('/', { replace: true });
  }, [leavesSignIn]);

  if (session.state === 'signed out') return <SignedOutPage again={session.again} onSignedIn={refresh} />;
  if (session.state === 'unknown') {
    return session.problem === undefined ? null : (
      <Threshold title={texts.app.name}>
        <ProblemNote problem={session.problem} />
        <Button mt="lg" onClick={() => void refresh()}>
          {texts.app.tryAgain}
        </Button>
      </Threshold>
    );
  }
  return (
    // Somebody else at the same browser finds nothing of the one before.
    <SignedInContext key={session.requester.accountId} value={{ requester: session.requester, refresh }}>
      <Frame path={path}>
        <OpenPage path={path} />
      </Frame>
    </SignedInContext>
  );
}

function OpenPage({ path }: { path: string }) {
  const texts = useTexts();
  if (path === '/' || path === '/sign-in') return <StartPage />;
  if (path === '/account') return <AccountPage />;
  const place = placeOf(path);
  if (place) return <AccessPage key={path} place={place} />;
  return (
    <Page title={texts.app.noSuchPage} lead={texts.app.noSuchPageDetail}>
      <PageLink to="/" alone>
        {texts.app.toStart}
      </PageLink>
    </Page>
  );
}
