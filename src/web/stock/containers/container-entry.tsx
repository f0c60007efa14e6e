import type { ContainerView } from '../../../stock/container-list.views.js';
import { Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { nameOf, writtenAmount, writtenLabel } from '../amounts.js';
import { Sign } from '../sign.js';
import type { StudioFacts } from '../use-studio-facts.js';
import { containerCondition } from './container-condition.js';
import { SmallTimeBar } from './time-bar-picture.js';

/** One bottle or box in a list. */
export function ContainerEntry({
  studioId,
  container,
  facts,
  isOfLot = false,
}: {
  studioId: string;
  container: ContainerView;
  facts: StudioFacts;
  /** Whether the lot, and so the product, is known from the page. */
  isOfLot?: boolean;
}) {
  const texts = useTexts();
  const { condition, standing } = containerCondition(container, facts.near);
  const { lotCode, codeState, life } = container;
  const label = writtenLabel(container.labelCode);
  const about = [
    texts.containerForms[container.form],
    texts.containerStates[container.state],
    writtenAmount(container, texts),
    facts.placeName(container.placeId),
    facts.personName(container.ownerId),
  ];
  return (
    <Entry
      name={
        <PageLink to={pathOf({ studioId, area: 'stock' }, 'containers', container.id)} alone>
          {isOfLot ? label : `${nameOf(container)}, ${label}`}
        </PageLink>
      }
      isOver={standing === 'over' && condition !== 'practice only'}
    >
      {!isOfLot && (
        <p>
          {container.makerName}, {lotCode === null ? texts.codeStates[codeState] : texts.lot.of(lotCode)}
        </p>
      )}
      <p>{about.filter((one) => one !== undefined).join(', ')}</p>
      <p>
        <Sign standing={standing}>{texts.conditions[condition]}</Sign>
        {life.lastDay !== null &&
          standing !== 'over' &&
          texts.container.through(writtenDay(life.lastDay, texts.language))}
      </p>
      <SmallTimeBar container={container} facts={facts} />
    </Entry>
  );
}
