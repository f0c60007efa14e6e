import { TextInput } from '@mantine/core';
import { PasswordField } from '../frame/password-field.js';
import { isProblem, type ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import type { NewAccount } from './sign-in.requests.js';

/** What somebody chooses to sign in with; a refused choice is told at its field. */
export function NewAccountFields({
  account,
  onChange,
  passwordLabel,
  problem,
}: {
  account: NewAccount;
  onChange: (account: NewAccount) => void;
  passwordLabel: string;
  problem: ServiceProblem | undefined;
}) {
  const texts = useTexts();
  return (
    <>
      <TextInput
        label={texts.signInName.label}
        description={texts.signInName.hint}
        required
        maxLength={100}
        autoComplete="username"
        autoCapitalize="none"
        spellCheck={false}
        value={account.signInName}
        error={problem?.detailOf('already-exists') ?? problem?.faultOf('signInName')}
        onChange={(event) => onChange({ ...account, signInName: event.currentTarget.value })}
      />
      <NewPasswordField
        label={passwordLabel}
        value={account.password}
        problem={problem}
        onChange={(password) => onChange({ ...account, password })}
      />
    </>
  );
}

/** A password that is chosen; why it will not do is said by the service. */
export function NewPasswordField({
  label,
  value,
  problem,
  onChange,
}: {
  label: string;
  value: string;
  problem: ServiceProblem | undefined;
  onChange: (password: string) => void;
}) {
  const texts = useTexts();
  return (
    <PasswordField
      purpose="new-password"
      label={label}
      description={texts.password.hint}
      value={value}
      error={problem?.detailOf('unusable-password')}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
}

/** Whether a problem is told at one of the fields above. */
export function isToldAtField(problem: ServiceProblem | undefined): boolean {
  return isProblem(problem, 'unusable-password') || isProblem(problem, 'already-exists');
}
