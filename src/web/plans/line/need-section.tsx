import { Temporal } from 'temporal-polyfill';
import type { PlanLineView } from '../../../reorder/plan/plans.views.js';
import { Facts } from '../../frame/facts.js';
import { Section } from '../../frame/section.js';
import { Figures } from '../../stock/figures.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { writtenShare } from '../figures/written-chance.js';
import { unitsAlone, writtenNumber, writtenUnits } from '../figures/written-units.js';
import numbers from '../numbers.module.css';
import { NumbersTable } from '../numbers-table.js';
import { NeedChart } from './need-chart.js';

/** What will be needed: known, half known and unforeseen, and by which methods the last was foretold. */
export function NeedSection({ line: { item, demand } }: { line: PlanLineView }) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.planLine;
  const units = (amount: number) => writtenUnits(amount, item.unit, texts);
  // The figures are of all weeks that are looked at.
  const lastWeek = demand.byWeek.at(-1)?.from;
  const last = lastWeek && Temporal.PlainDate.from(lastWeek).add({ days: 6 }).toString();
  const weighed = demand.methods.filter(({ weight }) => weight > 0.005);
  return (
    <Section title={words.need} hint={words.needHint}>
      <Figures
        figures={[
          { name: words.weekly, value: units(demand.unitsPerWeek), isMain: true },
          { name: words.known, value: units(demand.knownUnits) },
          { name: words.halfKnown, value: units(demand.halfKnownUnits) },
          { name: words.unforeseen, value: units(demand.unforeseenUnits) },
        ]}
      />
      {last && <p>{words.needUntil(writtenDay(last, language))}</p>}
      <NeedChart weeks={demand.byWeek} unit={item.unit} />
      {demand.byWeek.length > 0 && (
        <details className={numbers.details}>
          <summary>{words.byWeek}</summary>
          <NumbersTable
            label={words.byWeek}
            first={words.weekFrom}
            columns={[words.known, words.halfKnown, words.unforeseen].map((name) =>
              words.inUnit[item.unit](name),
            )}
            rows={demand.byWeek.map((week) => ({
              key: week.from,
              name: writtenDay(week.from, language),
              cells: [week.knownUnits, week.halfKnownUnits, week.unforeseenUnits].map((amount) =>
                unitsAlone(amount, item.unit, language),
              ),
            }))}
          />
        </details>
      )}
      <Facts
        facts={[
          [words.history, words.weeks(demand.weeksOfHistory)],
          [
            words.seriesClass,
            demand.seriesClass === null
              ? words.classUnknown
              : (words.classes[demand.seriesClass] ?? demand.seriesClass),
          ],
          [
            words.interval,
            demand.averageDemandInterval !== null &&
              (demand.averageDemandInterval < 1.05
                ? words.everyWeek
                : words.everyWeeks(writtenNumber(demand.averageDemandInterval, language))),
          ],
        ]}
      />
      <details className={numbers.details}>
        <summary>{words.howForetold}</summary>
        <Facts
          facts={[
            [words.variation, demand.sizeVariation !== null && writtenNumber(demand.sizeVariation, language)],
            [
              words.methods,
              weighed.length > 0 &&
                weighed
                  .map(
                    ({ method, weight }) =>
                      `${words.methodNames[method] ?? method} ${writtenShare(weight, language)}`,
                  )
                  .join(', '),
            ],
          ]}
        />
      </details>
    </Section>
  );
}
