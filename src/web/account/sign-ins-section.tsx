import { Button } from '@mantine/core';
import type { OwnSignInView } from '../../identity/sign-in/sign-in.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entries, Entry } from '../frame/entries.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstantHere } from '../texts/written-dates.js';
import { endSignIns, listSignIns } from './account.requests.js';
import { deviceOf } from './device-name.js';

/** Where one is signed in, to be ended one by one or all at once. */
export function SignInsSection() {
  const texts = useTexts();
  const { answer: signIns, problem, reload } = useAnswer(['sign-ins'], listSignIns);
  const others = signIns?.filter(({ isThis }) => !isThis) ?? [];
  return (
    <Section title={texts.account.signIns} hint={texts.account.signInsHint}>
      <ProblemNote problem={problem} />
      {signIns && (
        <Entries label={texts.account.signIns}>
          {signIns.map((signIn) => (
            <SignIn key={signIn.id} signIn={signIn} onEnded={reload} />
          ))}
        </Entries>
      )}
      {signIns && others.length === 0 && <p>{texts.account.onlyHere}</p>}
      {others.length > 1 && (
        <ConfirmButton
          question={texts.account.endOthersQuestion}
          action={async () => {
            await endSignIns();
            await reload();
          }}
        >
          {texts.account.endOthers}
        </ConfirmButton>
      )}
    </Section>
  );
}

function SignIn({ signIn, onEnded }: { signIn: OwnSignInView; onEnded: () => Promise<void> }) {
  const texts = useTexts();
  const { id, device, method, onTablet, createdAt, lastSeenAt, isThis } = signIn;
  const { run, busy, problem } = useAction(async () => {
    await endSignIns(id);
    await onEnded();
  });
  const made = deviceOf(device);
  const name = made ? texts.account.device(made.browser, made.system) : texts.account.unknownDevice;
  const when = (instant: string) => writtenInstantHere(instant, texts.language);
  return (
    <Entry
      name={name}
      mark={isThis ? texts.account.thisOne : onTablet ? texts.account.sharedTablet : undefined}
      actions={
        !isThis && (
          <Button
            variant="default"
            loading={busy}
            aria-label={texts.account.endOf(name)}
            onClick={() => void run()}
          >
            {texts.account.end}
          </Button>
        )
      }
      below={<ProblemNote problem={problem} />}
    >
      <p>{texts.account.since(when(createdAt), texts.methods[method])}</p>
      <p>{texts.account.lastSeen(when(lastSeenAt))}</p>
    </Entry>
  );
}
