import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { findClients } from '../clients/clients.requests.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import styles from './filters.module.css';

/** Narrows the list of sessions to one client, found by their reference. */
export function OneClientFilter({
  standing: { studioId, permissions },
  clientId,
  onShow,
  onAll,
}: {
  standing: StandingView;
  clientId: string | undefined;
  onShow: (clientId: string) => void;
  onAll: () => void;
}) {
  const texts = useTexts();
  const [text, setText] = useState('');
  const [missing, setMissing] = useState(false);
  const { run, busy, problem } = useAction(async () => {
    const found = await findClients(studioId, text);
    const [client] = found.filter(({ reference }) => sameReference(reference, text));
    setMissing(client === undefined);
    if (client) onShow(client.id);
  });
  if (clientId !== undefined) {
    return (
      <div className={styles.oneClient}>
        <p>{texts.sessionList.oneClient}</p>
        <Button variant="default" onClick={onAll}>
          {texts.sessionList.allClients}
        </Button>
      </div>
    );
  }
  if (!permissions.includes('read clients')) return null;
  return (
    <>
      <form
        className={styles.oneClient}
        aria-label={texts.sessionList.ofClient}
        onSubmit={(event) => {
          event.preventDefault();
          if (text.trim() !== '') void run();
        }}
      >
        <TextInput
          label={texts.sessionList.ofClient}
          autoComplete="off"
          maxLength={200}
          value={text}
          onChange={(event) => {
            setMissing(false);
            setText(event.currentTarget.value);
          }}
        />
        <Button type="submit" variant="default" loading={busy}>
          {texts.sessionList.ofClientSubmit}
        </Button>
      </form>
      <ProblemNote problem={problem} />
      {missing && (
        <Note kind="fault">
          <p>{texts.sessionList.noSuchReference}</p>
        </Note>
      )}
    </>
  );
}

function sameReference(one: string, other: string): boolean {
  const bare = (text: string) => text.replaceAll(/[^0-9a-z]/gi, '').toUpperCase();
  return bare(one) === bare(other);
}
