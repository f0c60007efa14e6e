import { Button, Group, NativeSelect, Radio, Stack, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { type VisitKind, visitKinds } from '../../sessions/vocabulary.js';
import { treats } from '../access/treats.js';
import { Fields } from '../frame/fields.js';
import { pathOfTray } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { Events } from '../service/events.js';
import { usePeople, useProcedures } from '../service/studio-answers.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { ClientFinder } from './client-finder.js';
import { beginWalkIn } from './walk-in.requests.js';

const longestName = 200;
const longestContact = 200;

/** Somebody who is here now, known or new: one form, then straight to the tray. */
export function WalkInForm({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const [opened, setOpened] = useState(false);
  return (
    <Section title={texts.walkIn.title} hint={texts.walkIn.hint}>
      {opened ? (
        <Form standing={standing} onCancel={() => setOpened(false)} />
      ) : (
        <Button variant="default" onClick={() => setOpened(true)}>
          {texts.walkIn.open}
        </Button>
      )}
    </Section>
  );
}

function Form({ standing, onCancel }: { standing: StandingView; onCancel: () => void }) {
  const texts = useTexts();
  const open = useNavigate();
  const { studioId, personId, permissions } = standing;
  // Nobody's name is looked up on a shared tablet.
  const mayFind = permissions.includes('read clients');
  const [isKnown, setKnown] = useState(mayFind);
  const [clientId, setClientId] = useState('');
  const [name, setName] = useState('');
  const [contact, setContact] = useState('');
  const [artistId, setArtistId] = useState(personId);
  const [chosenProcedureId, setProcedureId] = useState('');
  const [visitKind, setVisitKind] = useState<VisitKind>('first session');
  const people = usePeople(studioId);
  const procedures = useProcedures(studioId);
  const artists = (people.answer ?? []).filter(treats);
  const procedureId = chosenProcedureId === '' ? procedures.answer?.[0]?.id : chosenProcedureId;
  const events = useRef(new Events()).current;
  const { run, busy, problem } = useAction(async () => {
    if (procedureId === undefined || (isKnown && clientId === '')) return;
    const content = {
      ...(isKnown ? { clientId } : { client: { name, ...(contact.trim() !== '' && { contact }) } }),
      artistId,
      procedureId,
      visitKind,
    };
    const { id } = await beginWalkIn(studioId, { ...content, ...events.of(content) });
    events.renew();
    await open(pathOfTray({ studioId, sessionId: id }));
  });
  if (procedures.answer?.length === 0) return <p>{texts.walkIn.noProcedures}</p>;
  return (
    <Stack gap="lg">
      <Radio.Group
        label={texts.walkIn.who}
        value={isKnown ? 'known' : 'new'}
        onChange={(value) => setKnown(value === 'known')}
      >
        <Stack gap="sm" mt="xs">
          {mayFind && <Radio value="known" label={texts.walkIn.known} />}
          <Radio value="new" label={texts.walkIn.fresh} />
        </Stack>
      </Radio.Group>
      {!mayFind && <p>{texts.walkIn.notHere}</p>}
      {isKnown && <ClientFinder studioId={studioId} clientId={clientId} onChoose={setClientId} />}
      <Fields onSubmit={() => void run()} label={texts.walkIn.title}>
        {!isKnown && (
          <>
            <TextInput
              label={texts.walkIn.name}
              required
              maxLength={longestName}
              autoComplete="off"
              value={name}
              error={problem?.faultOf('client.name')}
              onChange={(event) => setName(event.currentTarget.value)}
            />
            <TextInput
              label={texts.walkIn.contact}
              description={texts.walkIn.contactHint}
              maxLength={longestContact}
              autoComplete="off"
              value={contact}
              error={problem?.faultOf('client.contact')}
              onChange={(event) => setContact(event.currentTarget.value)}
            />
          </>
        )}
        <NativeSelect
          label={texts.walkIn.artist}
          value={artistId}
          data={artists.map((person) => ({ value: person.id, label: person.name ?? '' }))}
          onChange={(event) => setArtistId(event.currentTarget.value)}
        />
        <NativeSelect
          label={texts.walkIn.procedure}
          value={procedureId ?? ''}
          data={(procedures.answer ?? []).map((procedure) => ({
            value: procedure.id,
            label: procedure.name,
          }))}
          onChange={(event) => setProcedureId(event.currentTarget.value)}
        />
        <NativeSelect
          label={texts.walkIn.visitKind}
          value={visitKind}
          data={visitKinds.map((kind) => ({ value: kind, label: texts.visitKinds[kind] }))}
          onChange={(event) => setVisitKind(event.currentTarget.value as VisitKind)}
        />
        <ProblemNote problem={problem ?? people.problem ?? procedures.problem} />
        <Group gap="sm">
          <Button
            type="submit"
            loading={busy}
            disabled={procedureId === undefined || (isKnown && clientId === '')}
          >
            {texts.walkIn.begin}
          </Button>
          <Button variant="default" onClick={onCancel}>
            {texts.app.cancel}
          </Button>
        </Group>
      </Fields>
    </Stack>
  );
}
