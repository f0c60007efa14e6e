import { Button } from '@mantine/core';
import { useState } from 'react';
import type { ArtistPlanningView } from '../../../reorder/settings/planning-settings.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useEdits } from '../../frame/use-edits.js';
import { usePeople } from '../../service/studio-answers.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { ChangeForm } from '../change-form.js';
import { TextField } from '../text-field.js';
import { listArtistPlannings, setArtistPlanning } from './planning.requests.js';

/** Who treats here, and until when: what they need ends with their last day. */
export function ArtistsPart({ studioId }: { studioId: string }) {
  const texts = useTexts();
  const words = texts.planning;
  const people = usePeople(studioId);
  const { answer, problem, reload } = useAnswer(['artist plannings', studioId], () =>
    listArtistPlannings(studioId),
  );
  const nameOf = (personId: string) => people.answer?.find(({ id }) => id === personId)?.name ?? '…';
  return (
    <Section title={words.artists} hint={words.artistsHint}>
      <ProblemNote problem={problem ?? people.problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && (
        <Entries label={words.artists}>
          {answer.map((artist) => (
            <ArtistEntry
              key={artist.personId}
              studioId={studioId}
              artist={artist}
              name={nameOf(artist.personId)}
              reload={reload}
            />
          ))}
        </Entries>
      )}
    </Section>
  );
}

function ArtistEntry({
  studioId,
  artist,
  name,
  reload,
}: {
  studioId: string;
  artist: ArtistPlanningView;
  name: string;
  reload: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.planning;
  const [isChanging, setIsChanging] = useState(false);
  const { leavesOn, worksUntil } = artist;
  const written = (day: string) => writtenDay(day, texts.language);
  return (
    <Entry
      name={name}
      actions={
        !isChanging && (
          <Button variant="default" aria-label={words.leavingOf(name)} onClick={() => setIsChanging(true)}>
            {words.setLeaving}
          </Button>
        )
      }
      below={
        isChanging && (
          <LeavingForm
            studioId={studioId}
            artist={artist}
            title={words.leavingOf(name)}
            reload={reload}
            onClose={() => setIsChanging(false)}
          />
        )
      }
    >
      <p>{leavesOn === null ? words.noEnd : words.here(written(leavesOn))}</p>
      {worksUntil !== null && <p>{words.accessUntil(written(worksUntil))}</p>}
    </Entry>
  );
}

function LeavingForm({
  studioId,
  artist: { personId, leavesOn, version },
  title,
  reload,
  onClose,
}: {
  studioId: string;
  artist: ArtistPlanningView;
  title: string;
  reload: () => Promise<void>;
  onClose: () => void;
}) {
  const words = useTexts().planning;
  const edits = useEdits({ leavesOn: leavesOn ?? '' });
  return (
    <ChangeForm
      label={title}
      edits={edits}
      version={version ?? 0}
      save={(id) =>
        setArtistPlanning(studioId, personId, {
          id,
          leavesOn: edits.draft.leavesOn === '' ? null : edits.draft.leavesOn,
          ...(version !== null && { version }),
        })
      }
      reload={reload}
      onClose={onClose}
    >
      {(problem) => (
        <TextField
          edits={edits}
          field="leavesOn"
          problem={problem}
          type="date"
          label={words.leavesOn}
          description={words.leavesOnHint}
        />
      )}
    </ChangeForm>
  );
}
