import type { LineCostView, NeighbourView, PlanLineView } from '../../../reorder/plan/plans.views.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { costStanding } from '../figures/cost-standing.js';
import { writtenPerMille } from '../figures/written-chance.js';
import { writtenMoney, writtenMoneyChange } from '../figures/written-money.js';
import { unitsAlone, writtenNumber } from '../figures/written-units.js';
import numbers from '../numbers.module.css';
import { type NumbersRow, NumbersTable } from '../numbers-table.js';

const parts = [
  'wasteMinor',
  'shortageMinor',
  'orderMinor',
  'holdingMinor',
  'priceMinor',
  'leftMinor',
] as const;

/** Why not less, more, sooner or later: what each would cost, and of what that cost is made up. */
export function CostSection({ line }: { line: PlanLineView }) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.planLine;
  const { item, currency, costChosen, costOfNothing, neighbours, shortageCost } = line;
  const chosen = line.byItself ?? { packs: line.packs, on: line.orderOn, ...line.after };
  const { packs } = chosen;
  if (currency === null) return null;
  const money = (minor: number) => writtenMoney(minor, currency, language);
  const inUnit = words.inUnit[item.unit];
  const whole = (number: number) => writtenNumber(number, language);
  const day = (date: string | null) => (date === null ? words.none : writtenDay(date, language));
  const row = (
    name: string,
    choice: { packs: number; on: string | null; cost: LineCostView; unmetUnits: number; wasteUnits: number },
  ): NumbersRow => ({
    key: name,
    name,
    cells: [
      choice.packs,
      day(choice.on),
      money(choice.cost.totalMinor),
      choice.cost === costChosen
        ? words.none
        : writtenMoneyChange(choice.cost.totalMinor - costChosen.totalMinor, currency, language),
      unitsAlone(choice.unmetUnits, item.unit, language),
      unitsAlone(choice.wasteUnits, item.unit, language),
    ],
    isMain: choice.cost === costChosen,
  });
  const unmetAndWaste = ({
    expectedUnmetUnits,
    expectedWasteUnits,
  }: Pick<NeighbourView, 'expectedUnmetUnits' | 'expectedWasteUnits'>) => ({
    unmetUnits: expectedUnmetUnits,
    wasteUnits: expectedWasteUnits,
  });
  const least = Math.min(
    ...neighbours.map(({ extraMinor }) => extraMinor),
    packs > 0 ? costOfNothing.totalMinor - costChosen.totalMinor : 0,
  );
  const standing = costStanding(least, costChosen.standardErrorMinor);
  return (
    <Section title={words.whyNot} hint={`${words.costStandings[standing]} ${words.whyNotHint}`}>
      <NumbersTable
        label={words.whyNot}
        first={words.choice}
        columns={[
          words.packsColumn,
          words.orderOn,
          words.expectedCost,
          words.extra,
          inUnit(words.unmet),
          inUnit(words.waste),
        ]}
        rows={[
          row(words.choiceOf(packs, line.byItself !== null), {
            ...{ packs, on: chosen.on, cost: costChosen },
            ...unmetAndWaste(chosen),
          }),
          ...neighbours.map((one) => row(words.changes[one.change], { ...one, ...unmetAndWaste(one) })),
          ...(packs > 0
            ? [
                row(words.orderNothing, {
                  ...{ packs: 0, on: null, cost: costOfNothing },
                  ...unmetAndWaste(line.without),
                }),
              ]
            : []),
        ]}
      />
      <details className={numbers.details}>
        <summary>{words.costParts}</summary>
        <NumbersTable
          label={words.costParts}
          first={words.costPart}
          columns={[words.expectedCost]}
          rows={[
            ...parts.map((part) => ({
              key: part,
              name: words.costNames[part],
              cells: [money(costChosen[part])],
            })),
            { key: 'total', name: words.inAll, cells: [money(costChosen.totalMinor)], isMain: true },
          ]}
        />
        <p>{words.standardError(money(costChosen.standardErrorMinor))}</p>
      </details>
      <p>
        {shortageCost.from === 'set by hand'
          ? words.shortageByHand(money(shortageCost.minorPerNeed))
          : words.shortageByTarget(
              writtenPerMille(line.serviceTargetPerMille, language),
              money(shortageCost.minorPerNeed),
            )}
      </p>
      <p>{words.effort(whole(line.effort.candidates), whole(line.effort.paths))}</p>
    </Section>
  );
}
