import { Button } from '@mantine/core';
import { useState } from 'react';
import { useAnswer } from '../service/use-answer.js';
import { SignInPage } from '../sign-in/sign-in-page.js';
import { useTexts } from '../texts/texts.js';
import { askWhichTablet } from './tablet.requests.js';
import { TabletPage } from './tablet-page.js';

/** What is shown while nobody is signed in: on an enrolled tablet badge and PIN, elsewhere name and password. */
export function SignedOutPage({ again, onSignedIn }: { again: boolean; onSignedIn: () => Promise<void> }) {
  const texts = useTexts();
  const { answer: tablet, problem } = useAnswer(['tablet'], askWhichTablet);
  const [withPassword, setWithPassword] = useState(false);
  if (tablet === undefined && problem === undefined) return null;
  if (!tablet) return <SignInPage again={again} onSignedIn={onSignedIn} />;
  if (withPassword) {
    return (
      <SignInPage again={false} onSignedIn={onSignedIn}>
        <Button variant="default" onClick={() => setWithPassword(false)}>
          {texts.tablet.backToTablet}
        </Button>
      </SignInPage>
    );
  }
  return <TabletPage tablet={tablet} onSignedIn={onSignedIn} onWithPassword={() => setWithPassword(true)} />;
}
