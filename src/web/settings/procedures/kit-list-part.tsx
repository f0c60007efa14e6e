import { useState } from 'react';
import type { ProcedureView } from '../../../sessions/procedures.views.js';
import { treats } from '../../access/treats.js';
import { Choice } from '../../frame/choice.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useConfigurations, usePeople } from '../../service/studio-answers.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { showKitList } from '../settings.requests.js';
import { KitListForm } from './kit-list-form.js';
import { KitListLines } from './kit-list-lines.js';

/** What a procedure needs on the tray: its own list, and those of artists who work otherwise. */
export function KitListPart({
  studioId,
  procedure: { id: procedureId, name },
  mayChange,
}: {
  studioId: string;
  procedure: ProcedureView;
  mayChange: boolean;
}) {
  const texts = useTexts();
  const words = texts.procedures;
  const [artistId, setArtistId] = useState('');
  const { answer: people = [] } = usePeople(studioId);
  const { answer: pools } = useConfigurations(studioId);
  const { answer, problem, reload } = useAnswer(['kit list', studioId, procedureId, artistId], () =>
    showKitList(studioId, procedureId, artistId === '' ? undefined : artistId),
  );
  const artists = people.filter(treats);
  const isOwnList = answer !== undefined && (answer.artistId ?? '') === artistId;
  return (
    <>
      {artists.length > 1 && (
        <Choice
          label={words.whose}
          description={words.whoseHint}
          value={artistId}
          none={words.everybodys}
          choices={artists.map(({ id, name: person }) => ({
            value: id,
            label: person ?? texts.people.noName,
          }))}
          onChange={setArtistId}
        />
      )}
      <ProblemNote problem={problem} />
      {answer && !isOwnList && <p>{words.noOwnList}</p>}
      {answer && pools && !mayChange && <KitListLines items={answer.items} pools={pools} />}
      {answer && pools && mayChange && (
        <KitListForm
          key={artistId}
          studioId={studioId}
          procedureId={procedureId}
          artistId={artistId === '' ? null : artistId}
          label={words.kitListOf(name)}
          saved={answer}
          version={isOwnList ? answer.version : null}
          pools={pools}
          reload={reload}
        />
      )}
    </>
  );
}
