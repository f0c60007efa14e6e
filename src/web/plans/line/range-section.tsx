import type { PlanLineView } from '../../../reorder/plan/plans.views.js';
import { Section } from '../../frame/section.js';
import { Sign } from '../../stock/sign.js';
import { useTexts } from '../../texts/texts.js';
import { writtenShare } from '../figures/written-chance.js';
import { writtenMoney } from '../figures/written-money.js';
import { writtenNumber, writtenUnits } from '../figures/written-units.js';
import { NumbersTable } from '../numbers-table.js';

/** The three ways of keeping a slow shade, each with what it costs in a year, for what is used and by session. */
export function RangeSection({ line: { item, currency, range } }: { line: PlanLineView }) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.planLine;
  if (range === null || currency === null) return null;
  const money = (minor: number | null) =>
    minor === null ? words.none : writtenMoney(minor, currency, language);
  const ofUsed = item.unit === 'microlitres' ? 1000 : 1;
  return (
    <Section title={words.range} hint={words.rangeHint}>
      <p>
        {words.rangeChosen[range.chosenBy](texts.rangeChoices[range.choice])}
        {range.chosenBy === 'manager' &&
          range.advised !== range.choice &&
          ` ${words.rangeAdvised(texts.rangeChoices[range.advised])}`}
      </p>
      <p>
        {words.bookedInTime(
          writtenShare(range.bookedInTime, language),
          writtenNumber(tenths(range.sessionsPerYear), language),
        )}{' '}
        {!range.appointmentPossible && <Sign standing="care">{words.appointmentImpossible}</Sign>}
      </p>
      <NumbersTable
        label={words.range}
        first={words.choice}
        columns={[
          words.perYear,
          words.perUsed[item.unit],
          words.perSession,
          words.wastePerYear,
          words.unmetPerYear,
        ]}
        rows={range.options.map((option) => ({
          key: option.choice,
          name: texts.rangeChoices[option.choice],
          cells: [
            money(option.costPerYearMinor),
            money(option.costPerUsedUnitMinor === null ? null : option.costPerUsedUnitMinor * ofUsed),
            money(option.costPerSessionMinor),
            writtenUnits(option.wasteUnitsPerYear, item.unit, texts),
            writtenNumber(tenths(option.unmetSessionsPerYear), language),
          ],
          isMain: option.choice === range.choice,
        }))}
      />
    </Section>
  );
}

function tenths(amount: number): number {
  return Math.round(amount * 10) / 10;
}
