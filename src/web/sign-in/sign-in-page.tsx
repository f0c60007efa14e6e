import { Code } from '@mantine/core';
import type { ReactNode } from 'react';
import { Threshold } from '../frame/threshold.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { askWhetherSetUpIsOpen } from './sign-in.requests.js';
import { SignInForm } from './sign-in-form.js';

/** Where one signs in; what was open stays open behind it. */
export function SignInPage({
  again,
  onSignedIn,
  children,
}: {
  /** Whether somebody was signed in until now. */
  again: boolean;
  onSignedIn: () => Promise<void>;
  /** Other ways, below. */
  children?: ReactNode;
}) {
  const texts = useTexts();
  const { answer: setUp } = useAnswer(['set-up'], askWhetherSetUpIsOpen);
  if (setUp?.isOpen) {
    return (
      <Threshold title={texts.signIn.setUpOpen} lead={texts.signIn.setUpOpenDetail}>
        <p>
          {texts.setUp.newLink} <Code>npm run cli -- sign-in-link</Code>
        </p>
      </Threshold>
    );
  }
  return (
    <Threshold title={texts.signIn.title} {...(again && { lead: texts.signIn.again })}>
      <SignInForm onSignedIn={onSignedIn} />
      <p>
        {texts.signIn.forgotten} <Code>npm run cli -- sign-in-link</Code>
      </p>
      {children}
    </Threshold>
  );
}
