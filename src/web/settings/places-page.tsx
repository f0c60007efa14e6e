import { Button, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { PlaceView } from '../../stock/places.views.js';
import { type PlaceKind, placeKinds } from '../../stock/vocabulary.js';
import { Choice } from '../frame/choice.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entries, Entry } from '../frame/entries.js';
import { Fields } from '../frame/fields.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { RequestIds } from '../service/request-ids.js';
import { usePlaces } from '../service/studio-answers.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { addPlace, archivePlace } from './places.requests.js';

/** Where stock stands. */
export function PlacesPage({ standing: { studioId, studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.places;
  const { answer, problem, reload } = usePlaces(studioId);
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.list} hint={words.listHint}>
        <ProblemNote problem={problem} />
        {!answer && !problem && <p role="status">{texts.app.loading}</p>}
        {answer && (
          <Entries label={words.list}>
            {answer.map((place) => (
              <PlaceEntry key={place.id} studioId={studioId} place={place} onArchived={reload} />
            ))}
          </Entries>
        )}
      </Section>
      <Section title={words.add} hint={words.addHint}>
        <AddPlaceForm studioId={studioId} onAdded={reload} />
      </Section>
    </Page>
  );
}

function PlaceEntry({
  studioId,
  place: { id, name, kind, archived },
  onArchived,
}: {
  studioId: string;
  place: PlaceView;
  onArchived: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.places;
  const ids = useRef(new RequestIds()).current;
  return (
    <Entry
      name={name}
      isOver={archived}
      mark={archived ? words.archived : undefined}
      actions={
        !archived && (
          <ConfirmButton
            label={words.archiveOf(name)}
            question={words.archiveQuestion(name)}
            action={async () => {
              await archivePlace(studioId, id, { id: ids.for({ archive: id }) });
              await onArchived();
            }}
          >
            {words.archive}
          </ConfirmButton>
        )
      }
    >
      <p>{words.kinds[kind]}</p>
    </Entry>
  );
}

function AddPlaceForm({ studioId, onAdded }: { studioId: string; onAdded: () => Promise<void> }) {
  const texts = useTexts();
  const words = texts.places;
  const [name, setName] = useState('');
  const [kind, setKind] = useState<PlaceKind>('shelf');
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const place = { name: name.trim(), kind };
    await addPlace(studioId, { id: ids.for(place), ...place });
    ids.renew();
    setName('');
    await onAdded();
  });
  const exists = problem?.detailOf('already-exists');
  return (
    <Fields onSubmit={() => void run()} label={words.add}>
      <TextInput
        label={words.name}
        description={words.nameHint}
        required
        maxLength={60}
        autoComplete="off"
        value={name}
        error={exists ?? problem?.faultOf('name')}
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <Choice
        label={words.kind}
        description={words.kindHint}
        value={kind}
        choices={placeKinds.map((value) => ({ value, label: words.kinds[value] }))}
        onChange={(chosen) => chosen !== '' && setKind(chosen)}
      />
      <ProblemNote problem={exists === undefined ? problem : undefined} />
      <div>
        <Button type="submit" loading={busy}>
          {words.addSubmit}
        </Button>
      </div>
    </Fields>
  );
}
