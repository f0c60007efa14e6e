import type { PlanLineView } from '../../../reorder/plan/plans.views.js';
import { Section } from '../../frame/section.js';
import { Sign } from '../../stock/sign.js';
import { useTexts } from '../../texts/texts.js';
import { writtenShare } from '../figures/written-chance.js';
import { writtenMoney } from '../figures/written-money.js';
import { writtenNumber, writtenUnits } from '../figures/written-units.js';
import numbers from '../numbers.module.css';

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
          range.cheapest !== range.choice &&
          ` ${words.rangeCheapest(texts.rangeChoices[range.cheapest])}`}
      </p>
      <p>
        {words.bookedInTime(
          writtenShare(range.bookedInTime, language),
          writtenNumber(range.sessionsPerYear, language),
        )}{' '}
        {!range.appointmentPossible && <Sign standing="care">{words.appointmentImpossible}</Sign>}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what can be moved sideways is moved by keys too. */}
      <section className={numbers.scroll} aria-label={words.range} tabIndex={0}>
        <table className={numbers.table}>
          <thead>
            <tr>
              <th scope="col">{words.choice}</th>
              {[
                words.perYear,
                words.perUsed[item.unit],
                words.perSession,
                words.wastePerYear,
                words.unmetPerYear,
              ].map((name) => (
                <th key={name} scope="col" className={numbers.number}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {range.options.map((option) => (
              <tr key={option.choice} data-chosen={option.choice === range.choice || undefined}>
                <th scope="row">{texts.rangeChoices[option.choice]}</th>
                <td className={numbers.number}>{money(option.costPerYearMinor)}</td>
                <td className={numbers.number}>
                  {money(option.costPerUsedUnitMinor === null ? null : option.costPerUsedUnitMinor * ofUsed)}
                </td>
                <td className={numbers.number}>{money(option.costPerSessionMinor)}</td>
                <td className={numbers.number}>{writtenUnits(option.wasteUnitsPerYear, item.unit, texts)}</td>
                <td className={numbers.number}>{writtenNumber(option.unmetSessionsPerYear, language)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </Section>
  );
}
