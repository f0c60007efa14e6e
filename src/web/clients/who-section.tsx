import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ClientView } from '../../clients/clients.views.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Facts } from '../frame/facts.js';
import { Fields } from '../frame/fields.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { Section } from '../frame/section.js';
import { useEdits } from '../frame/use-edits.js';
import type { ServiceProblem } from '../service/problem.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstant } from '../texts/written-dates.js';
import { changeClient } from './clients.requests.js';
import { type WhoDraft, WhoFields, whoOf } from './who-fields.js';

/** Name, contact and note of a client: this is the page for which they are read. */
export function WhoSection({
  standing: { studioId, permissions },
  client,
  problem,
  timeZone,
  onChanged,
}: {
  standing: StandingView;
  client: ClientView | undefined;
  problem: ServiceProblem | undefined;
  timeZone: string;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const [changing, setChanging] = useState(false);
  const at = (instant: string) => writtenInstant(instant, texts.language, timeZone);
  return (
    <Section title={texts.client.who}>
      <ProblemNote problem={problem} />
      {!client && !problem && <p role="status">{texts.app.loading}</p>}
      {client && client.erasedAt !== null && (
        <Note kind="plain">
          <p>{texts.client.erased(at(client.erasedAt))}</p>
        </Note>
      )}
      {client && client.erasedAt === null && !changing && (
        <>
          <Facts
            facts={[
              [texts.client.name, client.name],
              [texts.client.contact, client.contact ?? texts.client.nothing],
              [texts.client.note, client.note ?? texts.client.nothing],
              [texts.client.since, at(client.createdAt)],
            ]}
          />
          {permissions.includes('change clients') && (
            <Button mt="md" variant="default" onClick={() => setChanging(true)}>
              {texts.client.change}
            </Button>
          )}
        </>
      )}
      {client && changing && (
        <ChangeClientForm
          studioId={studioId}
          client={client}
          onChanged={async () => {
            await onChanged();
            setChanging(false);
          }}
          onStale={onChanged}
          onCancel={() => setChanging(false)}
        />
      )}
    </Section>
  );
}

/** Read anew after somebody else's change, what was written here stays, and nothing else of theirs is overwritten. */
function ChangeClientForm({
  studioId,
  client,
  onChanged,
  onStale,
  onCancel,
}: {
  studioId: string;
  client: ClientView;
  onChanged: () => Promise<void>;
  onStale: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const edits = useEdits<WhoDraft>({
    name: client.name ?? '',
    contact: client.contact ?? '',
    note: client.note ?? '',
  });
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const change = { version: client.version, ...whoOf(edits.draft) };
    await readAnewIfStale(
      () => changeClient(studioId, client.id, { id: ids.for(change), ...change }),
      onStale,
    );
    await onChanged();
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.client.changeForm}>
      <WhoFields draft={edits.draft} problem={problem} onChange={edits.set} />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}
