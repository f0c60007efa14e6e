import { useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { ShownContainerView } from '../../../stock/container-list.views.js';
import type { ContainerChangeView } from '../../../stock/container-operations.views.js';
import { isPast } from '../../../stock/shelf-life.js';
import { Facts } from '../../frame/facts.js';
import { PageLink } from '../../frame/navigation.js';
import { NoSuchPage } from '../../frame/no-such-page.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { isProblem } from '../../service/problem.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { nameOf, writtenAmount, writtenLabel } from '../amounts.js';
import { FindField } from '../find/find-field.js';
import { HoldsSection } from '../holds/holds-section.js';
import { showLot } from '../lots/lots.requests.js';
import { Sign } from '../sign.js';
import { type StudioFacts, useStudioFacts } from '../use-studio-facts.js';
import type { Operation } from './allowed-operations.js';
import { containerCondition } from './container-condition.js';
import { showContainer } from './containers.requests.js';
import { OperationsSection } from './operations-section.js';
import { RecordedNote } from './recorded-note.js';
import { TimeBarPicture } from './time-bar-picture.js';

/** One bottle or box: its time, what it holds, and what can be recorded of it. */
export function ContainerPage({ standing, id }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const { studioId, studioName } = standing;
  const { facts, problem } = useStudioFacts(studioId);
  const container = useAnswer(['container', studioId, id], () => showContainer(studioId, id));
  if (isProblem(container.problem, 'not-found')) return <NoSuchPage />;
  const shown = container.answer;
  return (
    <>
      <FindField studioId={studioId} />
      <Page
        above={studioName}
        title={shown ? nameOf(shown) : texts.container.title}
        {...(shown && { lead: `${texts.containerForms[shown.form]} ${writtenLabel(shown.labelCode)}` })}
      >
        <ProblemNote problem={container.problem ?? problem} />
        {(!shown || !facts) && !container.problem && !problem && <p role="status">{texts.app.loading}</p>}
        {shown && facts && (
          <ContainerParts standing={standing} container={shown} facts={facts} onChanged={container.reload} />
        )}
      </Page>
    </>
  );
}

function ContainerParts({
  standing,
  container,
  facts,
  onChanged,
}: {
  standing: StandingView;
  container: ShownContainerView;
  facts: StudioFacts;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const { studioId, permissions } = standing;
  const at = useStudioInstants(studioId);
  const { lotId, life, lotCode } = container;
  const area = { studioId, area: 'stock' } as const;
  const [recorded, setRecorded] = useState<{ operation: Operation; change: ContainerChangeView }>();
  const lot = useAnswer(['lot of container', studioId, lotId], () => showLot(studioId, lotId, { limit: 1 }));
  const { condition, standing: sign } = containerCondition(container, facts.near);
  const change = async () => {
    await Promise.all([onChanged(), lot.reload()]);
  };
  const onHand = lot.answer && {
    pieces: lot.answer.quantities.onHandPieces,
    microlitres: lot.answer.quantities.onHandMicrolitres,
  };
  return (
    <>
      {recorded && <RecordedNote studioId={studioId} {...recorded} ofLot={onHand} />}
      <Section title={texts.container.time} hint={texts.container.timeHint}>
        <p>
          <Sign standing={sign}>{texts.conditions[condition]}</Sign>
          {isPast(life.status) && sign === 'fault' && condition !== life.status && (
            <Sign standing="fault">{texts.conditions[life.status]}</Sign>
          )}
          {life.lastDay !== null && texts.container.through(writtenDay(life.lastDay, texts.language))}
          {life.daysLeft !== null && life.daysLeft >= 0 && sign !== 'over' && (
            <> {texts.container.daysLeft(life.daysLeft)}</>
          )}
        </p>
        <TimeBarPicture container={container} facts={facts} />
        {life.openedLifeFrom === 'assumed' && <p>{texts.container.assumed}</p>}
        {life.openedLifeFrom === 'sending studio' && <p>{texts.container.sendingStudio}</p>}
      </Section>
      <OperationsSection
        standing={standing}
        container={container}
        facts={facts}
        onRecorded={async (operation, made) => {
          await change();
          setRecorded({ operation, change: made });
        }}
      />
      <Section title={texts.container.facts}>
        <Facts
          facts={[
            [
              texts.lot.lot,
              <PageLink key="lot" alone to={pathOf(area, 'lots', lotId)}>
                {lotCode ?? texts.codeStates[container.codeState]}
              </PageLink>,
            ],
            [texts.lot.maker, container.makerName],
            [texts.container.state, texts.containerStates[container.state]],
            [texts.container.place, facts.placeName(container.placeId) ?? '–'],
            [texts.container.owner, facts.personName(container.ownerId) ?? texts.container.studio],
            [texts.container.inIt, writtenAmount(container, texts)],
            [texts.container.onTrays, container.onTrays.pieces],
            [texts.container.received, at(container.receivedAt)],
            [texts.container.opened, container.openedAt !== null && at(container.openedAt)],
          ]}
        />
        {permissions.includes('print labels') && (
          <PageLink alone to={`${pathOf(area, 'labels')}?lot=${lotId}`}>
            {texts.container.printLabel}
          </PageLink>
        )}
      </Section>
      <HoldsSection
        standing={standing}
        on={{ containerId: container.id }}
        holds={(lot.answer?.holds ?? []).filter(
          ({ containerId }) => containerId === null || containerId === container.id,
        )}
        inherited={container.holds.filter(({ on }) => on === 'parent lot').length}
        onChanged={change}
      />
    </>
  );
}
