import type { LineCostView, PlanLineView } from '../../../reorder/plan/plans.views.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { writtenPerMille } from '../figures/written-chance.js';
import { writtenMoney, writtenMoneyChange } from '../figures/written-money.js';
import { writtenUnits } from '../figures/written-units.js';
import numbers from '../numbers.module.css';

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
  const { item, currency, costChosen, costOfNothing, neighbours, packs, orderOn, shortageCost } = line;
  if (currency === null) return null;
  const money = (minor: number) => writtenMoney(minor, currency, language);
  const day = (date: string | null) => (date === null ? words.none : writtenDay(date, language));
  const chosen: [
    name: string,
    packs: number,
    on: string | null,
    cost: LineCostView,
    unmet: number,
    waste: number,
  ] = [
    packs > 0 ? words.theChoice : words.orderNothing,
    packs,
    orderOn,
    costChosen,
    line.after.expectedUnmetUnits,
    line.after.expectedWasteUnits,
  ];
  const rows = [
    chosen,
    ...neighbours.map((one): typeof chosen => [
      words.changes[one.change],
      one.packs,
      one.on,
      one.cost,
      one.expectedUnmetUnits,
      one.expectedWasteUnits,
    ]),
    ...(packs > 0
      ? [
          [
            words.orderNothing,
            0,
            null,
            costOfNothing,
            line.without.expectedUnmetUnits,
            line.without.expectedWasteUnits,
          ] satisfies typeof chosen,
        ]
      : []),
  ];
  return (
    <Section title={words.whyNot} hint={words.whyNotHint}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what can be moved sideways is moved by keys too. */}
      <section className={numbers.scroll} aria-label={words.whyNot} tabIndex={0}>
        <table className={numbers.table}>
          <thead>
            <tr>
              <th scope="col">{words.choice}</th>
              {[
                words.packsColumn,
                words.orderOn,
                words.expectedCost,
                words.extra,
                words.unmet,
                words.waste,
              ].map((name) => (
                <th key={name} scope="col" className={numbers.number}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(([name, count, on, cost, unmet, waste], index) => (
              <tr key={name} data-chosen={index === 0 || undefined}>
                <th scope="row">{name}</th>
                <td className={numbers.number}>{count}</td>
                <td className={numbers.number}>{day(on)}</td>
                <td className={numbers.number}>{money(cost.totalMinor)}</td>
                <td className={numbers.number}>
                  {index === 0
                    ? words.none
                    : writtenMoneyChange(cost.totalMinor - costChosen.totalMinor, currency, language)}
                </td>
                <td className={numbers.number}>{writtenUnits(unmet, item.unit, texts)}</td>
                <td className={numbers.number}>{writtenUnits(waste, item.unit, texts)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <details className={numbers.details}>
        <summary>{words.costParts}</summary>
        <table className={numbers.table}>
          <tbody>
            {parts.map((part) => (
              <tr key={part}>
                <th scope="row">{words.costNames[part]}</th>
                <td className={numbers.number}>{money(costChosen[part])}</td>
              </tr>
            ))}
            <tr data-chosen="">
              <th scope="row">{texts.plans.total}</th>
              <td className={numbers.number}>{money(costChosen.totalMinor)}</td>
            </tr>
          </tbody>
        </table>
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
      <p>{words.effort(line.effort.candidates, line.effort.paths)}</p>
    </Section>
  );
}
