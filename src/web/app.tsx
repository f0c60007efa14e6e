import { usePath } from './frame/navigation.js';
import { SignedInApp } from './frame/signed-in-app.js';
import { InvitationPage } from './sign-in/invitation-page.js';
import { SetUpPage } from './sign-in/set-up-page.js';

/** The path decides which page is shown; two of them are for people who cannot sign in yet. */
export function App() {
  const path = usePath();
  if (path === '/set-up') return <SetUpPage />;
  if (path === '/invitation') return <InvitationPage />;
  return <SignedInApp path={path} />;
}
