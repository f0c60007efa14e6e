import { localDay } from '../../identity/local-day.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type {
  BasketLineView,
  BasketView,
  PlanDetailView,
  PlanLineSummaryView,
} from '../../reorder/plan/plans.views.js';
import type { LineDecision } from '../../reorder/plan/vocabulary.js';
import { Entries } from '../frame/entries.js';
import { Section } from '../frame/section.js';
import { useStudio } from '../service/studio-answers.js';
import { type Figure, Figures } from '../stock/figures.js';
import { Sign } from '../stock/sign.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { DraftOrder } from './draft-order.js';
import { writtenMoney } from './figures/written-money.js';
import { writtenUnits } from './figures/written-units.js';
import { LineEntry, pathOfLine, remarksOf, stockFigures } from './line-entry.js';
import { MinimumChoices } from './minimum-choices.js';
import styles from './plans.module.css';

/** One order to one supplier, as a plan puts it together. */
export function BasketSection({
  standing: { studioId, permissions },
  plan,
  basket,
  lines,
}: {
  standing: StandingView;
  plan: PlanDetailView;
  basket: BasketView;
  /** The lines of the plan that are known, by their numbers. */
  lines: ReadonlyMap<number, PlanLineSummaryView>;
}) {
  const texts = useTexts();
  const words = texts.plans;
  const { currency, deliveryMinor, freeDeliveryMissingMinor: missing } = basket;
  const money = (minor: number) => writtenMoney(minor, currency, texts.language);
  const title = words.orderTo(basket.supplierName);
  const isDue = basket.on <= plan.plannedOn;
  const timeZone = useStudio(studioId).answer?.timeZone;
  const isOfToday = timeZone !== undefined && plan.plannedOn === localDay(new Date().toISOString(), timeZone);
  const figures: (Figure | false)[] = [
    { name: words.goods, value: money(basket.goodsMinor) },
    { name: words.delivery, value: deliveryMinor === 0 ? words.freeDelivery : money(deliveryMinor) },
    { name: words.total, value: money(basket.totalMinor), isMain: true },
    basket.minimumMinor !== null && { name: words.minimumOrder, value: money(basket.minimumMinor) },
  ];
  return (
    <Section
      title={title}
      hint={isDue && isOfToday ? words.orderToday : words.orderBy(writtenDay(basket.on, texts.language))}
    >
      <div className={styles.above}>
        <Figures figures={figures.filter((figure) => figure !== false)} />
      </div>
      {basket.minimumState !== 'none' && (
        <p>
          {words.minimumOrder}:{' '}
          {basket.minimumState === 'not reached' ? (
            <Sign standing="fault">{words.minimumMissing(money(basket.minimumMissingMinor))}</Sign>
          ) : (
            <Sign standing="good">
              {basket.minimumState === 'reached' ? words.minimumReached : words.minimumReachedByAdding}
            </Sign>
          )}
        </p>
      )}
      {deliveryMinor > 0 && missing !== null && missing > 0 && <p>{words.freeFrom(money(missing))}</p>}
      <MinimumChoices basket={basket} />
      <Entries label={title}>
        {basket.lines.map((line) => (
          <BasketLine
            key={line.lineNumber}
            studioId={studioId}
            planId={plan.id}
            line={line}
            known={lines.get(line.lineNumber)}
            currency={currency}
            otherwise={isDue ? 'order now' : 'order later'}
          />
        ))}
      </Entries>
      {plan.purpose === 'plan' && permissions.includes('place orders') && (
        <DraftOrder studioId={studioId} planId={plan.id} basket={basket} isDue={isDue} />
      )}
    </Section>
  );
}

function BasketLine({
  studioId,
  planId,
  line,
  known,
  currency,
  otherwise,
}: {
  studioId: string;
  planId: string;
  line: BasketLineView;
  known: PlanLineSummaryView | undefined;
  currency: string;
  /** What it is, where the line was not decided to be ordered by itself. */
  otherwise: LineDecision;
}) {
  const texts = useTexts();
  const words = texts.plans;
  const { packs, ownPacks, priceMinor } = line;
  const ordered =
    known && known.packs > 0
      ? `, ${writtenUnits((known.orderedUnits / known.packs) * packs, known.item.unit, texts)}`
      : '';
  return (
    <LineEntry
      path={pathOfLine(studioId, planId, line.lineNumber)}
      label={line.label}
      decision={known?.decision ?? otherwise}
      remarks={[
        ...line.reasons.map((reason) => words.basketReasons[reason]).filter((text) => text !== ''),
        ...(ownPacks > 0 && packs > ownPacks ? [words.added(packs - ownPacks)] : []),
        ...(known ? remarksOf(known, texts) : []),
      ]}
      line={known}
      figures={[
        { name: words.figures.order, value: `${words.packs(packs)}${ordered}`, isMain: true },
        {
          name: words.figures.cost,
          value: writtenMoney(priceMinor, currency, texts.language),
          isMain: true,
        },
        ...(known ? stockFigures(known, texts) : []),
      ]}
    />
  );
}
