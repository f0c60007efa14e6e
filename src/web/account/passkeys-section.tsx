import { Anchor, Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import { Entries } from '../frame/entries.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { addPasskey, asLocalhost, passkeysWorkHere } from '../service/passkeys.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useSignedIn } from '../sign-in/requester.js';
import { ProblemOrSignInAgain } from '../sign-in/sign-in-again.js';
import { useTexts } from '../texts/texts.js';
import { listPasskeys } from './account.requests.js';
import { PasskeyEntry } from './passkey-entry.js';

/** The passkeys one signs in with, and how to add another. */
export function PasskeysSection() {
  const texts = useTexts();
  const { refresh } = useSignedIn();
  const { answer: passkeys, problem, reload } = useAnswer(['passkeys'], listPasskeys);
  const [name, setName] = useState('');
  const [added, setAdded] = useState<string>();
  const adding = useAction(async () => {
    setAdded(undefined);
    await addPasskey(name);
    setAdded(name);
    setName('');
    await Promise.all([reload(), refresh()]);
  });
  const elsewhere = asLocalhost();
  return (
    <Section title={texts.account.passkeys} hint={texts.account.passkeysHint}>
      <ProblemNote problem={problem} />
      {passkeys?.length === 0 && <p>{texts.account.noPasskeys}</p>}
      {passkeys && passkeys.length > 0 && (
        <Entries label={texts.account.passkeys}>
          {passkeys.map((passkey) => (
            <PasskeyEntry key={passkey.id} passkey={passkey} onChanged={reload} />
          ))}
        </Entries>
      )}
      {passkeysWorkHere() ? (
        <Fields onSubmit={() => void adding.run()} label={texts.account.addPasskey}>
          <TextInput
            label={texts.account.passkeyName}
            description={texts.account.passkeyNameHint}
            required
            maxLength={100}
            autoComplete="off"
            value={name}
            error={adding.problem?.faultOf('name')}
            onChange={(event) => setName(event.currentTarget.value)}
          />
          <ProblemOrSignInAgain problem={adding.problem} onSignedIn={adding.run} />
          {added !== undefined && (
            <Note kind="good">
              <p>{texts.account.passkeyAdded(added)}</p>
            </Note>
          )}
          <div>
            <Button type="submit" loading={adding.busy}>
              {texts.account.addPasskey}
            </Button>
          </div>
        </Fields>
      ) : (
        <p>
          {texts.account.passkeysUnsupported}{' '}
          {elsewhere !== undefined && <Anchor href={elsewhere}>{texts.account.passkeysAtLocalhost}</Anchor>}
        </p>
      )}
    </Section>
  );
}
