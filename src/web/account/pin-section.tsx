import { Button } from '@mantine/core';
import { useState } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { mostDigits } from '../../identity/tablets/pin-fault.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Fields } from '../frame/fields.js';
import { PasswordField } from '../frame/password-field.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { ProblemOrSignInAgain } from '../sign-in/sign-in-again.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstantHere } from '../texts/written-dates.js';
import { choosePin, removePin, showPin } from './account.requests.js';

/** The PIN by which one is known on the tablets of a studio. */
export function PinSection({ standing: { studioId, studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  const { answer, problem, reload } = useAnswer(['pin', studioId], () => showPin(studioId));
  const [pin, setPin] = useState('');
  const choosing = useAction(async () => {
    await choosePin(studioId, pin);
    setPin('');
    await reload();
  });
  const removing = useAction(async () => {
    await removePin(studioId);
    await reload();
  });
  const chosenAt = answer?.chosenAt ?? null;
  const refused = choosing.problem?.detailOf('unusable-pin') ?? choosing.problem?.faultOf('pin');
  return (
    <Section title={texts.account.pin} hint={texts.account.pinHint(studioName)}>
      <ProblemNote problem={problem} />
      {answer && (
        <p>
          {chosenAt === null
            ? texts.account.noPin
            : texts.account.pinChosen(writtenInstantHere(chosenAt, texts.language))}
        </p>
      )}
      <Fields onSubmit={() => void choosing.run()} label={texts.account.pinHint(studioName)}>
        <PasswordField
          purpose="off"
          inputMode="numeric"
          label={texts.account.pinLabel}
          maxLength={mostDigits}
          value={pin}
          error={refused}
          onChange={(event) => setPin(event.currentTarget.value)}
        />
        {refused === undefined && (
          <ProblemOrSignInAgain problem={choosing.problem} onSignedIn={choosing.run} />
        )}
        <div>
          <Button type="submit" loading={choosing.busy}>
            {texts.account.choosePin}
          </Button>
        </div>
      </Fields>
      {chosenAt !== null && (
        <>
          <ConfirmButton mt="lg" question={texts.account.removePinQuestion} action={removing.run}>
            {texts.account.removePin}
          </ConfirmButton>
          <ProblemOrSignInAgain problem={removing.problem} onSignedIn={removing.run} />
        </>
      )}
    </Section>
  );
}
