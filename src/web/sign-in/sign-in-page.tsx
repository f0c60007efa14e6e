import { Button, Code, TextInput } from '@mantine/core';
import { useState } from 'react';
import { Fields } from '../frame/fields.js';
import { PasswordField } from '../frame/password-field.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Threshold } from '../frame/threshold.js';
import { useWait } from '../frame/use-wait.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { askWhetherSetUpIsOpen, signIn } from './sign-in.requests.js';

/** Where one signs in; what was open stays open behind it. */
export function SignInPage({ again, onSignedIn }: { again: boolean; onSignedIn: () => Promise<void> }) {
  const texts = useTexts();
  const { answer: setUp } = useAnswer('set-up', askWhetherSetUpIsOpen);
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
    </Threshold>
  );
}

/** Name and password, or a passkey. */
export function SignInForm({ onSignedIn }: { onSignedIn: () => Promise<void> }) {
  const texts = useTexts();
  const [signInName, setSignInName] = useState('');
  const [password, setPassword] = useState('');
  const { run, busy, problem } = useAction(async () => {
    await signIn({ signInName, password });
    await onSignedIn();
  });
  const wait = useWait(problem);
  return (
    <Fields onSubmit={() => void run()} label={texts.signIn.title}>
      <TextInput
        label={texts.signInName.label}
        required
        maxLength={100}
        autoComplete="username webauthn"
        autoCapitalize="none"
        spellCheck={false}
        value={signInName}
        onChange={(event) => setSignInName(event.currentTarget.value)}
      />
      <PasswordField
        purpose="current-password"
        label={texts.signIn.password}
        value={password}
        onChange={(event) => setPassword(event.currentTarget.value)}
      />
      <ProblemNote problem={problem} secondsToWait={wait} />
      <Button type="submit" loading={busy} disabled={wait > 0}>
        {texts.signIn.submit}
      </Button>
    </Fields>
  );
}
