import { Route, Routes } from 'react-router';
import { useTopOfPage } from './frame/navigation.js';
import { SignedInApp } from './frame/signed-in-app.js';
import { Answers } from './service/answers.js';
import { InvitationPage } from './sign-in/invitation-page.js';
import { SetUpPage } from './sign-in/set-up-page.js';
import { InLanguage } from './texts/language.js';

/** Two pages are for people who cannot sign in yet. */
export function App() {
  useTopOfPage();
  return (
    <InLanguage>
      <Answers>
        <Routes>
          <Route path="/set-up" element={<SetUpPage />} />
          <Route path="/invitation" element={<InvitationPage />} />
          <Route path="*" element={<SignedInApp />} />
        </Routes>
      </Answers>
    </InLanguage>
  );
}
