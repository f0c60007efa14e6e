import type { PlanDetailView, PlanSumsView } from '../../../reorder/plan/plans.views.js';
import { useTexts } from '../../texts/texts.js';
import { writtenMoney, writtenMoneyChange } from '../figures/written-money.js';
import { NumbersTable } from '../numbers-table.js';

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
    <NumbersTable
      label={words.sums}
      first={words.sums}
      columns={[words.asPlanned, words.whatIf, words.difference]}
      rows={sums.map(([name, sum]) => ({
        key: name,
        name: texts.plans.sumsNames[name],
        cells: [
          money(before[sum]),
          money(after[sum]),
          writtenMoneyChange(after[sum] - before[sum], before.currency, language),
        ],
      }))}
    />
  );
}
