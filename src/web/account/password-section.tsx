import { Button } from '@mantine/core';
import { useState } from 'react';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { PasswordField } from '../frame/password-field.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useWait } from '../frame/use-wait.js';
import { isProblem } from '../service/problem.js';
import { useAction } from '../service/use-action.js';
import { NewPasswordField } from '../sign-in/account-fields.js';
import { useTexts } from '../texts/texts.js';
import { changePassword } from './account.requests.js';

/** A new password, given the present one. */
export function PasswordSection({ signInName }: { signInName: string }) {
  const texts = useTexts();
  const [currentPassword, setCurrentPassword] = useState('');
  const [newPassword, setNewPassword] = useState('');
  const [isChanged, setIsChanged] = useState(false);
  const { run, busy, problem } = useAction(async () => {
    setIsChanged(false);
    await changePassword({ currentPassword, newPassword });
    setCurrentPassword('');
    setNewPassword('');
    setIsChanged(true);
  });
  const wait = useWait(problem);
  return (
    <Section title={texts.account.password} hint={texts.account.passwordHint}>
      <Fields onSubmit={() => void run()} label={texts.account.password}>
        {/* By this a password manager knows whose password it is. */}
        <input type="text" autoComplete="username" value={signInName} readOnly hidden />
        <PasswordField
          purpose="current-password"
          label={texts.account.current}
          value={currentPassword}
          onChange={(event) => setCurrentPassword(event.currentTarget.value)}
        />
        <NewPasswordField
          label={texts.account.next}
          value={newPassword}
          problem={problem}
          onChange={setNewPassword}
        />
        {!isProblem(problem, 'unusable-password') && <ProblemNote problem={problem} secondsToWait={wait} />}
        {isChanged && (
          <Note kind="good">
            <p>{texts.account.changed}</p>
          </Note>
        )}
        <div>
          <Button type="submit" loading={busy} disabled={wait > 0}>
            {texts.account.change}
          </Button>
        </div>
      </Fields>
    </Section>
  );
}
