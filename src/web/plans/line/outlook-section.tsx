import type { FanView, LineOutlookView, PlanLineView } from '../../../reorder/plan/plans.views.js';
import { Section } from '../../frame/section.js';
import type { Texts } from '../../texts/en/english.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { FanChart, type FanMark } from '../fan/fan-chart.js';
import type { FanDay } from '../fan/fan-geometry.js';
import { writtenChance } from '../figures/written-chance.js';
import { writtenMoney } from '../figures/written-money.js';
import { drawnAmount, writtenNumber, writtenUnits } from '../figures/written-units.js';
import numbers from '../numbers.module.css';
import { NumbersTable } from '../numbers-table.js';

/** What is to be expected with the plan and without it: drawn, and in figures beside each other. */
export function OutlookSection({ line, plannedOn }: { line: PlanLineView; plannedOn: string | undefined }) {
  const texts = useTexts();
  const words = texts.planLine;
  const { item, fanAfter, fanWithout, packs } = line;
  const written = {
    axis: (amount: number) => writtenNumber(amount, texts.language),
    table: (amount: number) => writtenNumber(amount, texts.language),
  };
  const fan = packs > 0 ? (fanAfter ?? fanWithout) : (fanWithout ?? fanAfter);
  const isAfter = packs > 0 && fanAfter !== null;
  const outlook = isAfter ? line.after : line.without;
  return (
    <Section title={words.outlook} hint={words.outlookHint(writtenDay(line.without.until, texts.language))}>
      {fan && (
        <FanChart
          title={words.fanTitle(words.unitsOf[item.unit], isAfter)}
          description={words.fanDescription(writtenChance(outlook.shortChance, texts))}
          days={daysOf(fan, item.unit)}
          marks={marksOf(line, isAfter, plannedOn, texts)}
          written={written}
        />
      )}
      {isAfter && fanWithout && (
        <details className={numbers.details}>
          <summary>{words.withoutOrder}</summary>
          <FanChart
            title={words.fanTitle(words.unitsOf[item.unit], false)}
            description={words.fanDescription(writtenChance(line.without.shortChance, texts))}
            days={daysOf(fanWithout, item.unit)}
            marks={marksOf(line, false, plannedOn, texts)}
            written={written}
          />
        </details>
      )}
      <OutlookTable line={line} />
    </Section>
  );
}

function daysOf(fan: FanView, unit: PlanLineView['item']['unit']): FanDay[] {
  const at = (amounts: readonly number[], index: number) => drawnAmount(amounts[index] ?? 0, unit);
  return fan.days.map((day, index) => ({
    day,
    p5: at(fan.p5, index),
    p25: at(fan.p25, index),
    p50: at(fan.p50, index),
    p75: at(fan.p75, index),
    p95: at(fan.p95, index),
  }));
}

function marksOf(
  line: PlanLineView,
  isAfter: boolean,
  plannedOn: string | undefined,
  texts: Texts,
): FanMark[] {
  const words = texts.planLine.marks;
  const { orderOn, arrivesOn, stock } = line;
  const { middle } = (isAfter ? line.after : line.without).shortOn;
  const mark = (kind: FanMark['kind'], day: string | null, name: (day: string) => string): FanMark[] =>
    day === null ? [] : [{ kind, day, words: name(writtenDay(day, texts.language)) }];
  return [
    ...(isAfter && orderOn !== plannedOn ? mark('order', orderOn, words.order) : []),
    ...(isAfter ? mark('arrival', arrivesOn, words.arrival) : []),
    ...mark('expiry', stock.nextLastDay, words.expiry),
    ...mark('short', middle, words.short),
  ];
}

function OutlookTable({ line }: { line: PlanLineView }) {
  const texts = useTexts();
  const words = texts.planLine;
  const { item, currency, without, after, packs } = line;
  const both = packs > 0;
  const none = texts.planLine.none;
  const day = (date: string | null) => (date === null ? none : writtenDay(date, texts.language));
  const rows: [name: string, write: (outlook: LineOutlookView) => string][] = [
    [words.shortChance, ({ shortChance }) => writtenChance(shortChance, texts)],
    [words.shortEarly, ({ shortOn }) => day(shortOn.early)],
    [words.shortMiddle, ({ shortOn }) => day(shortOn.middle)],
    [words.unmet, ({ expectedUnmetUnits }) => writtenUnits(expectedUnmetUnits, item.unit, texts)],
    [words.waste, ({ expectedWasteUnits }) => writtenUnits(expectedWasteUnits, item.unit, texts)],
    ...(currency === null
      ? []
      : [
          [
            words.wasteMoney,
            ({ expectedWasteMinor }: LineOutlookView) =>
              writtenMoney(expectedWasteMinor, currency, texts.language),
          ] as [string, (outlook: LineOutlookView) => string],
        ]),
    [words.cover, ({ coverDays }) => texts.plans.days(Math.round(coverDays))],
  ];
  return (
    <NumbersTable
      label={words.outlook}
      first={words.expected}
      columns={both ? [words.without, words.following] : [words.without]}
      rows={rows.map(([name, write]) => ({ key: name, name, cells: [write(without), write(after)] }))}
    />
  );
}
