import { lazy, Suspense } from 'react';
import { Route, Routes } from 'react-router';
import { useTopOfPage } from './frame/navigation.js';
import { SignedInApp } from './frame/signed-in-app.js';
import { useKeptFocus } from './frame/use-kept-focus.js';
import { Answers } from './service/answers.js';
import { InLanguage } from './texts/language.js';

/** Each is opened once by each person, so neither is loaded with the others. */
const SetUpPage = lazy(async () => ({ default: (await import('./sign-in/set-up-page.js')).SetUpPage }));
const InvitationPage = lazy(async () => ({
  default: (await import('./sign-in/invitation-page.js')).InvitationPage,
}));

/** Two pages are for people who cannot sign in yet. */
export function App() {
  useTopOfPage();
  useKeptFocus();
  return (
    <InLanguage>
      <Answers>
        <Suspense>
          <Routes>
            <Route path="/set-up" element={<SetUpPage />} />
            <Route path="/invitation" element={<InvitationPage />} />
            <Route path="*" element={<SignedInApp />} />
          </Routes>
        </Suspense>
      </Answers>
    </InLanguage>
  );
}
