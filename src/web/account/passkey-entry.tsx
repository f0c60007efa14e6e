import { Button } from '@mantine/core';
import { useState } from 'react';
import type { PasskeyView } from '../../identity/passkeys/passkeys.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entry } from '../frame/entries.js';
import { RenameForm } from '../frame/rename-form.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { useAction } from '../service/use-action.js';
import { useSignedIn } from '../sign-in/requester.js';
import { ProblemOrSignInAgain } from '../sign-in/sign-in-again.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstantHere } from '../texts/written-dates.js';
import { removePasskey, renamePasskey } from './account.requests.js';

/** One passkey, to be renamed or removed. */
export function PasskeyEntry({
  passkey,
  onChanged,
}: {
  passkey: PasskeyView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const { refresh } = useSignedIn();
  const { id, name, worksAt, createdAt, lastUsedAt, suspectedAt, version } = passkey;
  const [isRenaming, setIsRenaming] = useState(false);
  const removing = useAction(async () => {
    await removePasskey(id);
    await Promise.all([onChanged(), refresh()]);
  });
  const when = (instant: string) => writtenInstantHere(instant, texts.language);
  const facts = [
    texts.account.passkeyWorksAt(worksAt),
    texts.account.passkeyMadeAt(when(createdAt)),
    suspectedAt === null ? texts.account.passkeyUsedAt(when(lastUsedAt)) : texts.account.passkeySuspected,
  ];
  return (
    <Entry
      name={name}
      isOver={suspectedAt !== null}
      actions={
        !isRenaming && (
          <>
            <Button
              variant="default"
              aria-label={texts.account.renamePasskeyOf(name)}
              onClick={() => setIsRenaming(true)}
            >
              {texts.account.renamePasskey}
            </Button>
            <ConfirmButton
              label={texts.account.removePasskeyOf(name)}
              question={texts.account.removePasskeyQuestion(name)}
              action={removing.run}
            >
              {texts.account.removePasskey}
            </ConfirmButton>
          </>
        )
      }
      below={
        <>
          <ProblemOrSignInAgain problem={removing.problem} onSignedIn={removing.run} />
          {isRenaming && (
            <RenameForm
              title={texts.account.renamePasskeyOf(name)}
              label={texts.account.passkeyName}
              name={name}
              rename={async (newName) => {
                await readAnewIfStale(() => renamePasskey(id, { name: newName, version }), onChanged);
                await onChanged();
                setIsRenaming(false);
              }}
              onCancel={() => setIsRenaming(false)}
            />
          )}
        </>
      }
    >
      <p>{facts.join(', ')}</p>
    </Entry>
  );
}
