import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import { Fields } from '../frame/fields.js';
import { PasswordField } from '../frame/password-field.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useWait } from '../frame/use-wait.js';
import { passkeysWorkHere, signInWithPasskey } from '../service/passkeys.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { signIn } from './sign-in.requests.js';

/** Name and password, or a passkey. */
export function SignInForm({
  signInName: known,
  passkeyOnly = false,
  onSignedIn,
}: {
  /** Whoever is to sign in again. */
  signInName?: string;
  passkeyOnly?: boolean;
  onSignedIn: () => Promise<void>;
}) {
  const texts = useTexts();
  const [signInName, setSignInName] = useState(known ?? '');
  const [password, setPassword] = useState('');
  const byPassword = useAction(async () => {
    await signIn({ signInName, password });
    await onSignedIn();
  });
  const byPasskey = useAction(async () => {
    await signInWithPasskey();
    await onSignedIn();
  });
  const wait = useWait(byPassword.problem);
  return (
    <>
      {!passkeyOnly && (
        <Fields onSubmit={() => void byPassword.run()} label={texts.signIn.title}>
          <TextInput
            label={texts.signInName.label}
            required
            readOnly={known !== undefined}
            maxLength={100}
            autoComplete="username"
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
          <ProblemNote problem={byPassword.problem} secondsToWait={wait} />
          <Button type="submit" loading={byPassword.busy} disabled={wait > 0}>
            {texts.signIn.submit}
          </Button>
        </Fields>
      )}
      {passkeysWorkHere() && (
        <>
          <Button
            variant={passkeyOnly ? 'filled' : 'default'}
            fullWidth
            mt="md"
            mb="md"
            loading={byPasskey.busy}
            onClick={() => void byPasskey.run()}
          >
            {texts.signIn.withPasskey}
          </Button>
          <ProblemNote problem={byPasskey.problem} />
        </>
      )}
    </>
  );
}
