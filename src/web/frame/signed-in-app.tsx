import { Button } from '@mantine/core';
import { lazy, Suspense } from 'react';
import { Navigate, Route, Routes, useLocation } from 'react-router';
import { Answers } from '../service/answers.js';
import { leavingIsOver } from '../sign-in/leave.js';
import { SignedInContext, useRequester } from '../sign-in/requester.js';
import { useSession } from '../sign-in/use-session.js';
import { StartPage } from '../start/start-page.js';
import { SignedOutPage } from '../tablet/signed-out-page.js';
import { useTexts } from '../texts/texts.js';
import { Frame } from './frame.js';
import { NoSuchPage } from './no-such-page.js';
import { PageFault } from './page-fault.js';
import { areasOf, pathOf } from './places.js';
import { ProblemNote } from './problem-note.js';
import { StudioPages } from './studio-pages.js';
import { Threshold } from './threshold.js';

const AccountPage = lazy(async () => ({ default: (await import('../account/account-page.js')).AccountPage }));
const ToldPage = lazy(async () => ({ default: (await import('../told/told-page.js')).ToldPage }));

/**
 * The pages for whoever is signed in. When nobody is (any more), signing in takes the page's place, and the page is there
 * again afterwards: its path stays.
 */
export function SignedInApp() {
  const texts = useTexts();
  const { pathname } = useLocation();
  const { session, refresh } = useSession(pathname);

  if (session.state === 'signed out') {
    const onSignedIn = () => {
      leavingIsOver();
      return refresh();
    };
    return <SignedOutPage again={session.again} onSignedIn={onSignedIn} />;
  }
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
      <Answers>
        <Frame path={pathname}>
          <PageFault key={pathname}>
            <Suspense fallback={<p role="status">{texts.app.loading}</p>}>
              <Routes>
                <Route path="/" element={<Home />} />
                <Route path="/start" element={<StartPage />} />
                <Route path="/sign-in" element={<Navigate to="/" replace />} />
                <Route path="/account" element={<AccountPage />} />
                <Route path="/account/told/:studioId" element={<ToldPage />} />
                <Route path="/studios/:studioId/:area/*" element={<StudioPages />} />
                <Route path="*" element={<NoSuchPage />} />
              </Routes>
            </Suspense>
          </PageFault>
        </Frame>
      </Answers>
    </SignedInContext>
  );
}

/** Who works in one studio begins with its day; who works in several, or may do nothing yet, with where they work. */
function Home() {
  const { studios } = useRequester();
  const [only] = studios;
  const isOpen =
    only && studios.length === 1 && !only.passkeyNeeded && areasOf(only.permissions).includes('today');
  return isOpen ? (
    <Navigate to={pathOf({ studioId: only.studioId, area: 'today' })} replace />
  ) : (
    <StartPage />
  );
}
