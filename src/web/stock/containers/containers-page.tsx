import { Group } from '@mantine/core';
import { useSearchParams } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { type ContainerState, containerStates } from '../../../stock/vocabulary.js';
import { Choice } from '../../frame/choice.js';
import { Page } from '../../frame/page.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { FindField } from '../find/find-field.js';
import { useStudioFacts } from '../use-studio-facts.js';
import { ContainerEntry } from './container-entry.js';
import { listContainers } from './containers.requests.js';

const isState = (text: string | null): text is ContainerState =>
  containerStates.some((state) => state === text);

/** Bottles and boxes, by where they stand and in what state they are. */
export function ContainersPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioId, studioName } = standing;
  const { facts, problem } = useStudioFacts(studioId);
  const [parameters, setParameters] = useSearchParams();
  const placeId = parameters.get('place') ?? '';
  const asked = parameters.get('state');
  const state = isState(asked) ? asked : '';
  const list = usePages(['containers', studioId, placeId, state], (after) =>
    listContainers(studioId, { ...(placeId !== '' && { placeId }), ...(state !== '' && { state }) }, after),
  );
  const choose = (name: 'place' | 'state', value: string) => {
    const next = new URLSearchParams(parameters);
    if (value === '') next.delete(name);
    else next.set(name, value);
    setParameters(next, { replace: true });
  };
  return (
    <>
      <FindField studioId={studioId} />
      <Page above={studioName} title={texts.containers.title} lead={texts.containers.lead}>
        <ProblemNote problem={problem} />
        {facts && (
          <Group gap="md" align="flex-end" mb="xl">
            <Choice
              label={texts.containers.place}
              value={placeId}
              none={texts.containers.anywhere}
              choices={facts.places.map(({ id, name }) => ({ value: id, label: name }))}
              onChange={(value) => choose('place', value)}
            />
            <Choice
              label={texts.containers.state}
              value={state}
              none={texts.containers.here}
              choices={containerStates.map((one) => ({ value: one, label: texts.containerStates[one] }))}
              onChange={(value) => choose('state', value)}
            />
          </Group>
        )}
        {!facts && !problem && <p role="status">{texts.app.loading}</p>}
        {facts && (
          <PagedEntries
            label={texts.containers.title}
            list={list}
            none={texts.containers.none}
            entry={(container) => (
              <ContainerEntry key={container.id} studioId={studioId} container={container} facts={facts} />
            )}
          />
        )}
      </Page>
    </>
  );
}
