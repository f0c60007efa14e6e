import { Button, Group } from '@mantine/core';
import { useState } from 'react';
import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import type { RecallContainerView } from '../../../../recalls/containers/recall-containers.views.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import type { FindingResult } from '../../../../recalls/vocabulary.js';
import { Entry } from '../../../frame/entries.js';
import { PageLink } from '../../../frame/navigation.js';
import { pathOf, pathOfTray } from '../../../frame/places.js';
import { ShownPhoto } from '../../../frame/shown-photo.js';
import { useStudioInstants } from '../../../frame/use-studio-instants.js';
import { usePeople } from '../../../service/studio-answers.js';
import { nameOf, writtenAmount, writtenLabel } from '../../../stock/amounts.js';
import { Sign, type Standing } from '../../../stock/sign.js';
import { useTexts } from '../../../texts/texts.js';
import { DispositionForm } from './disposition-form.js';
import { FindingForm } from './finding-form.js';

const signs: Record<RecallContainerView['standing'], Standing> = {
  'not looked for': 'care',
  found: 'good',
  'not found': 'fault',
  disposed: 'over',
  gone: 'over',
};

/** A bottle or box of a recall: where it should be, whether it was found, and what became of it. */
export function RecallContainerEntry({
  standing,
  recall,
  container,
  isShown = false,
  onRecorded,
}: {
  standing: StandingView;
  recall: RecallView;
  container: RecallContainerView;
  /** Whether it was scanned just now: the form for what was found is open then. */
  isShown?: boolean;
  onRecorded: (warnings: string[]) => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.recallContainers;
  const { studioId, permissions } = standing;
  const when = useStudioInstants(studioId);
  const people = usePeople(studioId).answer;
  const [doing, setDoing] = useState<FindingResult | 'disposing' | undefined>(
    isShown && container.standing !== 'disposed' && container.standing !== 'gone' ? 'found' : undefined,
  );
  const { labelCode, finding, lotCode } = container;
  const about = `${nameOf(container)}, ${writtenLabel(labelCode)}`;
  const nameOfPerson = (id: string | null) =>
    people?.find((person) => person.id === id)?.name ?? words.somebody;
  const isHere = container.standing !== 'disposed' && container.standing !== 'gone';
  const isOpen = recall.state === 'open';
  const finish = async (warnings: string[]) => {
    await onRecorded(warnings);
    setDoing(undefined);
  };
  return (
    <Entry
      name={
        <PageLink alone to={pathOf({ studioId, area: 'stock' }, 'containers', container.containerId)}>
          {about}
        </PageLink>
      }
      isOver={!isHere}
      below={
        doing === 'disposing' ? (
          <DispositionForm
            standing={standing}
            recallId={recall.id}
            container={container}
            about={about}
            onRecorded={finish}
            onCancel={() => setDoing(undefined)}
          />
        ) : doing !== undefined ? (
          <FindingForm
            key={doing}
            studioId={studioId}
            recallId={recall.id}
            container={container}
            about={about}
            result={doing}
            isDrill={recall.kind === 'drill'}
            onRecorded={finish}
            onCancel={() => setDoing(undefined)}
          />
        ) : (
          isOpen &&
          isHere && (
            <Group gap="sm">
              {permissions.includes('find held stock') && (
                <>
                  <Button
                    aria-label={words.findOf(about)}
                    variant="default"
                    onClick={() => setDoing('found')}
                  >
                    {words.find}
                  </Button>
                  <Button
                    aria-label={words.missOf(about)}
                    variant="default"
                    onClick={() => setDoing('not found')}
                  >
                    {words.miss}
                  </Button>
                </>
              )}
              {permissions.includes('answer recalls') && recall.kind === 'recall' && (
                <Button
                  aria-label={words.disposeOf(about)}
                  variant="default"
                  onClick={() => setDoing('disposing')}
                >
                  {words.dispose}
                </Button>
              )}
            </Group>
          )
        )
      }
    >
      <p>
        <Sign standing={signs[container.standing]}>{words.standings[container.standing]}</Sign>
      </p>
      <p>
        {[
          lotCode === null ? words.noCode : words.lot(lotCode),
          `${container.placeName} (${words.placeKinds[container.placeKind]})`,
          ...(container.ownerId === null ? [] : [words.owner(nameOfPerson(container.ownerId))]),
          texts.containerStates[container.state],
          writtenAmount(container, texts),
        ].join(', ')}
      </p>
      {container.throughBlend && <p>{words.throughBlend}</p>}
      {container.lotStanding === 'undecided' && <p>{words.undecided}</p>}
      {container.trays.map(({ sessionId }) => (
        <p key={sessionId}>
          {words.onTray}{' '}
          <PageLink alone to={pathOfTray({ studioId, sessionId })}>
            {words.toTray}
          </PageLink>
        </p>
      ))}
      {finding !== null && (
        <p>
          {[
            (finding.result === 'found' ? words.foundAt : words.missedAt)(
              when(finding.occurredAt),
              nameOfPerson(finding.personId),
            ),
            ...(finding.tag === null ? [] : [words.tag(finding.tag)]),
            ...(finding.note === null ? [] : [finding.note]),
          ].join(', ')}
        </p>
      )}
      {finding?.photoId && <ShownPhoto studioId={studioId} photoId={finding.photoId} />}
      {container.dispositions.map((disposition) => (
        <div key={disposition.id}>
          <p>
            {[
              words.disposed(
                words.kinds[disposition.kind],
                writtenAmount(disposition, texts),
                when(disposition.occurredAt),
                disposition.reference,
              ),
              ...(disposition.witnessId === null
                ? []
                : [words.witnessedBy(nameOfPerson(disposition.witnessId))]),
            ].join(', ')}
          </p>
          {disposition.photoId !== null && <ShownPhoto studioId={studioId} photoId={disposition.photoId} />}
        </div>
      ))}
    </Entry>
  );
}
