import type { PlanDetailView, PlanSumsView } from '../../../reorder/plan/plans.views.js';
import { useTexts } from '../../texts/texts.js';
import { writtenMoney, writtenMoneyChange } from '../figures/written-money.js';
import numbers from '../numbers.module.css';

const sums = [
  ['today', 'orderTodayMinor'],
  ['withDelivery', 'orderTodayWithDeliveryMinor'],
  ['waste', 'expectedWasteMinor'],
] as const satisfies [string, keyof PlanSumsView][];

/** What a plan comes to, as it is and as it would be. */
export function SumsTable({ base, plan }: { base: PlanDetailView; plan: PlanDetailView }) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.whatIf;
  const [before, after] = [base.sums, plan.sums];
  if (!before || !after) return null;
  const money = (minor: number) => writtenMoney(minor, before.currency, language);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what can be moved sideways is moved by keys too.
    <section className={numbers.scroll} aria-label={words.sums} tabIndex={0}>
      <table className={numbers.table}>
        <thead>
          <tr>
            <th scope="col">{words.sums}</th>
            {[words.asPlanned, words.whatIf, words.difference].map((name) => (
              <th key={name} scope="col" className={numbers.number}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sums.map(([name, sum]) => (
            <tr key={name}>
              <th scope="row">{texts.plans.sumsNames[name]}</th>
              <td className={numbers.number}>{money(before[sum])}</td>
              <td className={numbers.number}>{money(after[sum])}</td>
              <td className={numbers.number}>
                {writtenMoneyChange(after[sum] - before[sum], before.currency, language)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
