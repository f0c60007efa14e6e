import { Button } from '@mantine/core';
import { useState } from 'react';
import { useNavigate } from 'react-router';
import type { InvitationView } from '../../identity/sign-in/sign-in.views.js';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Threshold } from '../frame/threshold.js';
import { isProblem } from '../service/problem.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { isToldAtField, NewAccountFields, NewPasswordField } from './account-fields.js';
import { leavingIsOver } from './leave.js';
import { forgetOneTimeSecret, useOneTimeSecret } from './one-time-secret.js';
import { acceptInvitation, askWhoIsSignedIn, lookAtInvitation } from './sign-in.requests.js';
import { SignInForm } from './sign-in-form.js';

/** Where somebody comes in whom an owner made a link for. */
export function InvitationPage() {
  const texts = useTexts();
  const secret = useOneTimeSecret();
  if (secret === '') {
    return (
      <Threshold title={texts.invitation.noSecret} lead={texts.invitation.noSecretDetail}>
        {null}
      </Threshold>
    );
  }
  return <Invitation key={secret} secret={secret} />;
}

function Invitation({ secret }: { secret: string }) {
  const texts = useTexts();
  const { answer, problem } = useAnswer(['invitation', secret], () => lookAtInvitation(secret));
  if (problem) {
    return (
      <Threshold title={texts.invitation.unusable}>
        <ProblemNote problem={problem} />
      </Threshold>
    );
  }
  if (!answer) {
    return <Threshold title={texts.app.loading}>{null}</Threshold>;
  }
  return answer.asks === 'new password' ? (
    <NewPassword secret={secret} invitation={answer} />
  ) : (
    <NewPerson secret={secret} invitation={answer} />
  );
}

/** Accepting, and going to the start once it is done. */
function useAcceptance() {
  const open = useNavigate();
  return useAction(async (given: Parameters<typeof acceptInvitation>[0]) => {
    await acceptInvitation(given);
    leavingIsOver();
    forgetOneTimeSecret();
    await open('/', { replace: true });
  });
}

function NewPassword({ secret, invitation }: { secret: string; invitation: InvitationView }) {
  const texts = useTexts();
  const [password, setPassword] = useState('');
  const { run, busy, problem } = useAcceptance();
  return (
    <Threshold
      title={texts.invitation.titleNewPassword}
      lead={texts.invitation.leadNewPassword(invitation.studioName)}
    >
      <Fields onSubmit={() => void run({ secret, password })}>
        <NewPasswordField
          label={texts.invitation.newPassword}
          value={password}
          problem={problem}
          onChange={setPassword}
        />
        {!isToldAtField(problem) && <ProblemNote problem={problem} />}
        <Button type="submit" loading={busy}>
          {texts.invitation.submitNewPassword}
        </Button>
      </Fields>
    </Threshold>
  );
}

function NewPerson({ secret, invitation }: { secret: string; invitation: InvitationView }) {
  const texts = useTexts();
  const [account, setAccount] = useState({ signInName: '', password: '' });
  const [signsIn, setSignsIn] = useState(false);
  const { answer: requester, reload } = useAnswer(['me'], askWhoIsSignedInIfAnyone);
  const joining = useAcceptance();
  const { run, busy, problem } = useAcceptance();
  const name = requester?.signInName ?? null;
  if (signsIn && name === null) {
    return (
      <Threshold title={texts.signIn.title} lead={texts.invitation.title(invitation.studioName)}>
        <SignInForm onSignedIn={reload} />
        <Button variant="default" mt="md" onClick={() => setSignsIn(false)}>
          {texts.app.cancel}
        </Button>
      </Threshold>
    );
  }
  return (
    <Threshold title={texts.invitation.title(invitation.studioName)} lead={texts.invitation.lead}>
      {name !== null && (
        <>
          <p>{texts.invitation.joinAs(name)}</p>
          <ProblemNote problem={joining.problem} />
          <Button loading={joining.busy} onClick={() => void joining.run({ secret })}>
            {texts.invitation.join(name)}
          </Button>
          <p>{texts.invitation.newAccount}</p>
        </>
      )}
      <Fields onSubmit={() => void run({ secret, ...account })}>
        <NewAccountFields
          account={account}
          onChange={setAccount}
          passwordLabel={texts.invitation.password}
          problem={problem}
        />
        {!isToldAtField(problem) && <ProblemNote problem={problem} />}
        <Button type="submit" variant={name === null ? 'filled' : 'default'} loading={busy}>
          {texts.invitation.submit}
        </Button>
      </Fields>
      {name === null && requester !== undefined && (
        <>
          <p>{texts.invitation.haveAccount}</p>
          <Button variant="default" onClick={() => setSignsIn(true)}>
            {texts.invitation.signInFirst}
          </Button>
        </>
      )}
    </Threshold>
  );
}

async function askWhoIsSignedInIfAnyone(): Promise<{ signInName: string | null }> {
  try {
    return await askWhoIsSignedIn();
  } catch (error) {
    if (isProblem(error, 'sign-in-needed')) return { signInName: null };
    throw error;
  }
}
