import { useState } from 'react';
import type { ContainerView } from '../../../stock/container-list.views.js';
import { hasEnded } from '../../../stock/container-transitions.js';
import type { LotView } from '../../../stock/lot-list.views.js';
import { Entries } from '../../frame/entries.js';
import { MoreButton } from '../../frame/more-button.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { ContainerEntry } from '../containers/container-entry.js';
import { useShown } from '../use-shown.js';
import type { StudioFacts } from '../use-studio-facts.js';
import { showLot } from './lots.requests.js';

/** The bottles and boxes of a lot: those that are here before those that are gone. */
export function LotContainers({
  studioId,
  lot,
  facts,
}: {
  studioId: string;
  lot: LotView;
  facts: StudioFacts;
}) {
  const texts = useTexts();
  const [loaded, setLater] = useState<{ of: LotView; containers: ContainerView[]; next: string | null }>();
  // What was loaded of the lot as it was before a change is asked for anew.
  const later = loaded?.of === lot ? loaded : undefined;
  const containers = [...lot.containers, ...(later?.containers ?? [])].sort(
    (one, other) => Number(hasEnded(one.state)) - Number(hasEnded(other.state)),
  );
  const list = useShown(containers);
  const next = later === undefined ? lot.nextContainer : later.next;
  const asking = useAction(async () => {
    if (next === null) return;
    const answer = await showLot(studioId, lot.id, { limit: 1, containersAfter: next });
    setLater({
      of: lot,
      containers: [...(later?.containers ?? []), ...answer.containers],
      next: answer.nextContainer,
    });
  });
  return (
    <Section title={texts.containers.title} hint={texts.lot.containersHint}>
      <Entries label={texts.containers.title}>
        {list.shown.map((container) => (
          <ContainerEntry
            key={container.id}
            studioId={studioId}
            container={container}
            facts={facts}
            isOfLot
          />
        ))}
      </Entries>
      <ProblemNote problem={asking.problem} />
      <MoreButton
        list={
          list.hasMore
            ? list
            : { hasMore: next !== null, isAsking: asking.busy, more: () => void asking.run() }
        }
      />
    </Section>
  );
}
