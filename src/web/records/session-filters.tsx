import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import { roleMay } from '../../identity/permissions.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { sessionStates } from '../../sessions/vocabulary.js';
import { Choice } from '../frame/choice.js';
import { usePeople } from '../service/studio-answers.js';
import { useTexts } from '../texts/texts.js';
import styles from './filters.module.css';
import { type SessionFilters as Filters } from './records.requests.js';

/** Days, state and artist by which the list of sessions is narrowed. */
export function SessionFilters({
  standing: { studioId },
  filters,
  onShow,
}: {
  standing: StandingView;
  filters: Filters;
  onShow: (filters: Filters) => void;
}) {
  const texts = useTexts();
  const [draft, setDraft] = useState(filters);
  const people = usePeople(studioId);
  return (
    <form
      className={styles.filters}
      aria-label={texts.sessionList.filters}
      onSubmit={(event) => {
        event.preventDefault();
        onShow(draft);
      }}
    >
      <TextInput
        type="date"
        label={texts.sessionList.from}
        value={draft.from ?? ''}
        onChange={(event) => setDraft({ ...draft, from: event.currentTarget.value || undefined })}
      />
      <TextInput
        type="date"
        label={texts.sessionList.to}
        value={draft.to ?? ''}
        onChange={(event) => setDraft({ ...draft, to: event.currentTarget.value || undefined })}
      />
      <Choice
        label={texts.sessionList.state}
        value={draft.state ?? ''}
        none={texts.sessionList.anyState}
        choices={sessionStates.map((state) => ({ value: state, label: texts.sessionStates[state] }))}
        onChange={(state) => setDraft({ ...draft, state: state === '' ? undefined : state })}
      />
      <Choice
        label={texts.sessionList.artist}
        value={draft.artistId ?? ''}
        none={texts.sessionList.anyArtist}
        choices={(people.answer ?? [])
          .filter(({ role }) => roleMay(role, 'work the tray'))
          .map(({ id, name }) => ({ value: id, label: name ?? texts.records.unknownPerson }))}
        onChange={(artistId) => setDraft({ ...draft, artistId: artistId || undefined })}
      />
      <Button type="submit" variant="default">
        {texts.sessionList.show}
      </Button>
    </form>
  );
}
