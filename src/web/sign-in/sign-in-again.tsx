import { Modal } from '@mantine/core';
import { useEffect, useState } from 'react';
import { ProblemNote } from '../frame/problem-note.js';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import { useSignedIn } from './requester.js';
import { SignInForm } from './sign-in-form.js';

const codes = ['recent-sign-in-needed', 'passkey-needed'];

/**
 * What a failed change says; when it wants whoever asks to sign in once more first, that is done in a dialog, and the
 * change is tried again.
 */
export function ProblemOrSignInAgain({
  problem,
  secondsToWait = 0,
  onSignedIn,
}: {
  problem: ServiceProblem | undefined;
  secondsToWait?: number;
  onSignedIn: () => Promise<void>;
}) {
  const texts = useTexts();
  const { requester, refresh } = useSignedIn();
  const asks = problem !== undefined && codes.includes(problem.code);
  const [opened, setOpened] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each new refusal asks anew.
  useEffect(() => setOpened(asks), [asks, problem]);
  return (
    <>
      <ProblemNote problem={problem} secondsToWait={secondsToWait} />
      <Modal
        opened={opened}
        onClose={() => setOpened(false)}
        title={texts.signIn.onceMore}
        centered
        closeButtonProps={{ 'aria-label': texts.app.close, size: 'xl' }}
      >
        <p>{texts.signIn.onceMoreAs(requester.signInName ?? '')}</p>
        <SignInForm
          signInName={requester.signInName ?? ''}
          passkeyOnly={problem?.code === 'passkey-needed'}
          onSignedIn={async () => {
            setOpened(false);
            await refresh();
            await onSignedIn();
          }}
        />
      </Modal>
    </>
  );
}
