import { Title } from '@mantine/core';
import type { PlanLineView } from '../../../reorder/plan/plans.views.js';
import { Entries } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useAnswer } from '../../service/use-answer.js';
import { type Figure, Figures } from '../../stock/figures.js';
import { LotEntry } from '../../stock/lots/lot-entry.js';
import { listLots } from '../../stock/lots/lots.requests.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { writtenUnits } from '../figures/written-units.js';
import styles from '../plans.module.css';

/** Of more products than this, their lots are looked up one product at a time. */
const mostProducts = 6;

/** What was here and on the way when the plan was made, and the lots as they stand now. */
export function StockSection({ studioId, line: { item, stock } }: { studioId: string; line: PlanLineView }) {
  const texts = useTexts();
  const words = texts.planLine;
  const units = (amount: number) => writtenUnits(amount, item.unit, texts);
  const containers = texts.plans.containers;
  const productIds = item.productIds.slice(0, mostProducts);
  const lots = useAnswer(['lots of an item', studioId, ...productIds], async () => {
    const pages = await Promise.all(
      productIds.map((productId) => listLots(studioId, { productId }, undefined)),
    );
    return pages.flatMap(({ items }) => items).filter(({ quantities }) => quantities.onHandPieces > 0);
  });
  const figures: (Figure | false)[] = [
    { name: words.usable, value: units(stock.usableUnits), isMain: true },
    { name: words.inContainers, value: stock.containers },
    stock.opened > 0 && { name: words.opened, value: stock.opened },
    { name: words.onTheWay, value: units(stock.onTheWayUnits) },
    stock.heldContainers > 0 && { name: words.held, value: units(stock.heldUnits) },
    stock.expiredContainers > 0 && { name: words.expired, value: containers(stock.expiredContainers) },
    stock.practiceContainers > 0 && { name: words.practice, value: containers(stock.practiceContainers) },
    stock.nextLastDay !== null && {
      name: words.nextLastDay,
      value: writtenDay(stock.nextLastDay, texts.language),
    },
  ];
  return (
    <Section title={words.stock} hint={words.stockHint}>
      <Figures figures={figures.filter((figure) => figure !== false)} />
      <Title order={3} className={styles.part}>
        {words.lots}
      </Title>
      <ProblemNote problem={lots.problem} />
      {lots.answer?.length === 0 && <p>{words.noLots}</p>}
      {lots.answer && lots.answer.length > 0 && (
        <Entries label={words.lots}>
          {lots.answer.map((lot) => (
            <LotEntry key={lot.id} studioId={studioId} lot={lot} />
          ))}
        </Entries>
      )}
      <PageLink to={pathOf({ studioId, area: 'stock' }, 'expected')} alone>
        {words.toExpected}
      </PageLink>
    </Section>
  );
}
