import type { PlanLineSummaryView } from '../../reorder/plan/plans.views.js';
import type { Figure } from '../stock/figures.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { writtenMoney } from './figures/written-money.js';
import { writtenUnits } from './figures/written-units.js';
import { LineEntry, pathOfLine, remarksOf, stockFigures } from './line-entry.js';

/** One line of a plan by itself. */
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
  const { plans: words, language } = texts;
  const { item, decision, packs, orderedUnits, costMinor, currency, orderOn } = line;
  const figures: (Figure | false)[] = [
    packs > 0 && {
      name: words.figures.order,
      value: `${words.packs(packs)}, ${writtenUnits(orderedUnits, item.unit, texts)}`,
      isMain: true,
    },
    packs > 0 &&
      costMinor !== null &&
      currency !== null && {
        name: words.figures.cost,
        value: writtenMoney(costMinor, currency, language),
        isMain: true,
      },
    decision === 'order later' &&
      orderOn !== null && { name: words.figures.on, value: writtenDay(orderOn, language) },
  ];
  return (
    <LineEntry
      path={pathOfLine(studioId, planId, line.lineNumber)}
      label={item.label}
      decision={decision}
      remarks={remarksOf(line, texts)}
      line={line}
      figures={[...figures.filter((figure) => figure !== false), ...stockFigures(line, texts)]}
    />
  );
}
