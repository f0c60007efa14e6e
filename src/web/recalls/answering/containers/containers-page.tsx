import { useState } from 'react';
import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import {
  type ContainerStanding,
  containerStandings,
} from '../../../../recalls/containers/container-standing.js';
import type { RecallContainerView } from '../../../../recalls/containers/recall-containers.views.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import { Choice } from '../../../frame/choice.js';
import { Entries } from '../../../frame/entries.js';
import { Note } from '../../../frame/note.js';
import { PagedEntries } from '../../../frame/paged-entries.js';
import { Section } from '../../../frame/section.js';
import { useAnswer } from '../../../service/use-answer.js';
import { useForgetAnswers } from '../../../service/use-forget-answers.js';
import { usePages } from '../../../service/use-pages.js';
import { writtenAmount, writtenLabel } from '../../../stock/amounts.js';
import { Figures } from '../../../stock/figures.js';
import { useTexts } from '../../../texts/texts.js';
import { RecallFrame } from '../../recall-frame.js';
import { listRecallContainers } from './containers.requests.js';
import { LabelField } from './label-field.js';
import { RecallContainerEntry } from './recall-container-entry.js';

/** Every bottle and box of a recall: found, tagged and put aside, or not found; and what became of it. */
export function ContainersPage({ standing, id }: { standing: StandingView; id: string }) {
  return (
    <RecallFrame standing={standing} recallId={id} part="containers">
      {(recall) => <Containers standing={standing} recall={recall} />}
    </RecallFrame>
  );
}

function Containers({ standing, recall }: { standing: StandingView; recall: RecallView }) {
  const texts = useTexts();
  const words = texts.recallContainers;
  const { studioId } = standing;
  const [filter, setFilter] = useState<ContainerStanding | ''>('');
  const [scanned, setScanned] = useState<RecallContainerView>();
  const [warned, setWarned] = useState<string[]>([]);
  const forget = useForgetAnswers();
  const { answer } = useAnswer(['totals of containers of recall', studioId, recall.id], () =>
    listRecallContainers(studioId, recall.id, undefined, undefined),
  );
  const list = usePages(['containers of recall', studioId, recall.id, filter], (after) =>
    listRecallContainers(studioId, recall.id, filter === '' ? undefined : filter, after),
  );
  const totals = answer?.totals;
  const recorded = async (warnings: string[]) => {
    setWarned(warnings);
    setScanned(undefined);
    await forget();
  };
  const entry = (container: RecallContainerView, isShown = false) => (
    <RecallContainerEntry
      key={container.containerId}
      standing={standing}
      recall={recall}
      container={container}
      isShown={isShown}
      onRecorded={recorded}
    />
  );
  return (
    <>
      <Section title={words.totals} hint={words.totalsHint}>
        {totals && (
          <Figures
            figures={[
              { name: words.figures.notLookedFor, value: totals.notLookedFor, isMain: true },
              { name: words.figures.notFound, value: totals.notFound },
              { name: words.figures.found, value: totals.found },
              { name: words.figures.disposed, value: totals.disposed },
              {
                name: words.figures.left,
                value: writtenAmount(
                  { pieces: totals.piecesLeft, microlitres: totals.microlitresLeft },
                  texts,
                ),
              },
            ]}
          />
        )}
        {recall.state === 'open' && standing.permissions.includes('find held stock') && (
          <LabelField studioId={studioId} recallId={recall.id} onFound={setScanned} />
        )}
        {warned.length > 0 && (
          <Note kind="fault">
            {warned.map((warning) => (
              <p key={warning} lang="en">
                {warning}
              </p>
            ))}
          </Note>
        )}
        {scanned && <Entries label={writtenLabel(scanned.labelCode)}>{entry(scanned, true)}</Entries>}
      </Section>
      <Section title={words.list} hint={words.listHint}>
        <Choice
          label={words.filter}
          value={filter}
          none={words.all}
          choices={containerStandings.map((value) => ({ value, label: words.standings[value] }))}
          onChange={setFilter}
        />
        <PagedEntries label={words.list} list={list} none={words.none} entry={(one) => entry(one)} />
      </Section>
    </>
  );
}
