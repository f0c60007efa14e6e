import type { PlanLineSummaryView } from '../../reorder/plan/plans.views.js';
import type { LineDecision } from '../../reorder/plan/vocabulary.js';
import { Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { type Figure, Figures } from '../stock/figures.js';
import { Sign, type Standing } from '../stock/sign.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { writtenChance } from './figures/written-chance.js';
import { writtenMoney } from './figures/written-money.js';
import { writtenUnits } from './figures/written-units.js';
import { lineSentence } from './line-sentence.js';
import styles from './plans.module.css';

export const standingOf: Record<LineDecision, Standing> = {
  'order now': 'care',
  'order later': 'good',
  'order for the appointment': 'good',
  'let run out': 'over',
  enough: 'good',
  'cannot be ordered': 'fault',
};

/** One line of a plan in a list: what was decided of an item, and why in a sentence. */
export function PlanLineEntry({
  studioId,
  planId,
  line,
}: {
  studioId: string;
  planId: string;
  line: PlanLineSummaryView;
}) {
  const texts = useTexts();
  const words = texts.plans;
  const {
    item,
    decision,
    packs,
    orderedUnits,
    costMinor,
    currency,
    orderOn,
    usableUnits,
    onTheWayUnits,
    shortChance,
  } = line;
  const units = (amount: number) => writtenUnits(amount, item.unit, texts);
  const remarks = line.notes.flatMap((code) => words.notes[code] ?? []);
  const figures: (Figure | false)[] = [
    packs > 0 && {
      name: words.figures.order,
      value: `${words.packs(packs)}, ${units(orderedUnits)}`,
      isMain: true,
    },
    costMinor !== null &&
      packs > 0 &&
      currency !== null && {
        name: words.figures.cost,
        value: writtenMoney(costMinor, currency, texts.language),
        isMain: true,
      },
    orderOn !== null &&
      decision === 'order later' && { name: words.figures.on, value: writtenDay(orderOn, texts.language) },
    { name: words.figures.here, value: units(usableUnits) },
    onTheWayUnits > 0 && { name: words.figures.onTheWay, value: units(onTheWayUnits) },
    { name: words.figures.weekly, value: units(line.unitsPerWeek) },
    { name: words.figures.short, value: writtenChance(shortChance, texts) },
  ];
  return (
    <Entry
      name={
        <PageLink
          to={pathOf({ studioId, area: 'ordering' }, 'plan', planId, 'lines', String(line.lineNumber))}
          alone
        >
          {item.label}
        </PageLink>
      }
    >
      <p>
        <Sign standing={standingOf[decision]}>{words.decisions[decision]}</Sign>
        {remarks.length > 0 && remarks.join(', ')}
      </p>
      <p className={styles.sentence}>{lineSentence(line, texts)}</p>
      <Figures figures={figures.filter((figure) => figure !== false)} />
    </Entry>
  );
}
