import { Button } from '@mantine/core';
import { useState } from 'react';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { PasswordField } from '../frame/password-field.js';
import { Section } from '../frame/section.js';
import { useWait } from '../frame/use-wait.js';
import { isProblem } from '../service/problem.js';
import { useAction } from '../service/use-action.js';
import { NewPasswordField } from '../sign-in/account-fields.js';
import { useSignedIn } from '../sign-in/requester.js';
import { ProblemOrSignInAgain } from '../sign-in/sign-in-again.js';
import { useTexts } from '../texts/texts.js';
import { changePassword, removePassword } from './account.requests.js';

/** A new password, given the present one; and doing without. */
export function PasswordSection({ signInName, hasPassword }: { signInName: string; hasPassword: boolean }) {
  const texts = useTexts();
  const { refresh } = useSignedIn();
  const [currentPassword, setCurrentPassword] = useState('');
  const [newPassword, setNewPassword] = useState('');
  const [isChanged, setIsChanged] = useState(false);
  const { run, busy, problem } = useAction(async () => {
    setIsChanged(false);
    await changePassword({ ...(hasPassword && { currentPassword }), newPassword });
    setCurrentPassword('');
    setNewPassword('');
    setIsChanged(true);
    await refresh();
  });
  const removing = useAction(async () => {
    setIsChanged(false);
    await removePassword();
    await refresh();
  });
  const wait = useWait(problem);
  return (
    <Section title={texts.account.password} hint={texts.account.passwordHint}>
      {!hasPassword && <p>{texts.account.noPassword}</p>}
      <Fields onSubmit={() => void run()} label={texts.account.password}>
        {/* By this a password manager knows whose password it is. */}
        <input type="text" autoComplete="username" value={signInName} readOnly hidden />
        {hasPassword && (
          <PasswordField
            purpose="current-password"
            label={texts.account.current}
            value={currentPassword}
            onChange={(event) => setCurrentPassword(event.currentTarget.value)}
          />
        )}
        <NewPasswordField
          label={texts.account.next}
          value={newPassword}
          problem={problem}
          onChange={setNewPassword}
        />
        {!isProblem(problem, 'unusable-password') && (
          <ProblemOrSignInAgain problem={problem} secondsToWait={wait} onSignedIn={run} />
        )}
        {isChanged && (
          <Note kind="good">
            <p>{texts.account.changed}</p>
          </Note>
        )}
        <div>
          <Button type="submit" loading={busy} disabled={wait > 0}>
            {hasPassword ? texts.account.change : texts.account.choose}
          </Button>
        </div>
      </Fields>
      {hasPassword && (
        <>
          <ConfirmButton mt="lg" question={texts.account.removeQuestion} action={removing.run}>
            {texts.account.remove}
          </ConfirmButton>
          <ProblemOrSignInAgain problem={removing.problem} onSignedIn={removing.run} />
        </>
      )}
    </Section>
  );
}
