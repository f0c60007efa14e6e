import type {
  ReplayItemView,
  ReplayOutcomeView,
  ReplayResultView,
  ReplaySumsView,
} from '../../../reorder/replay/replays.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { MoreButton } from '../../frame/more-button.js';
import { Section } from '../../frame/section.js';
import { useShown } from '../../stock/use-shown.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { writtenPerMille, writtenShare } from '../figures/written-chance.js';
import { writtenMoney } from '../figures/written-money.js';
import { writtenNumber, writtenUnits } from '../figures/written-units.js';
import { NumbersTable } from '../numbers-table.js';
import styles from '../plans.module.css';
import { reasonWords } from '../reason-words.js';

const ways = ['plan', 'asOrdered', 'fixed'] as const;

/** The three ways of ordering beside each other, all items and each, and how often forecasts were enough. */
export function ReplayResult({ result }: { result: ReplayResultView }) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.replay;
  const money = (minor: number) => writtenMoney(minor, result.currency, language);
  const whole = (amount: number) => writtenNumber(amount, language);
  const sums: [name: string, write: (one: ReplaySumsView) => string][] = [
    [words.shortDays, ({ shortDays }) => whole(shortDays)],
    [words.shortItems, ({ shortItems }) => whole(shortItems)],
    [words.waste, ({ wasteMinor }) => money(wasteMinor)],
    [words.orders, ({ orders }) => whole(orders)],
    [words.cost, ({ costMinor }) => money(costMinor)],
    [words.leftWorth, ({ endMinor }) => money(endMinor)],
  ];
  return (
    <>
      <Section
        title={words.all}
        hint={words.span(writtenDay(result.from, language), writtenDay(result.until, language), result.items)}
      >
        <NumbersTable
          label={words.all}
          first={words.what}
          columns={ways.map((way) => words.ways[way])}
          rows={sums.map(([name, write]) => ({
            key: name,
            name,
            cells: ways.map((way) => write(result[way])),
          }))}
        />
        <p className={styles.caution}>{words.costHint}</p>
        {result.itemsWithoutOffer > 0 && <p>{words.withoutOffer(result.itemsWithoutOffer)}</p>}
        {result.itemsBeyondLimit > 0 && <p>{words.beyondLimit(result.itemsBeyondLimit)}</p>}
      </Section>
      <Section title={words.calibration} hint={words.calibrationHint(result.calibrationWeeks)}>
        {result.calibration.length === 0 ? (
          <p>{words.noCalibration}</p>
        ) : (
          <NumbersTable
            label={words.calibration}
            first={words.level}
            columns={[words.enough, words.claimed, words.forecasts, words.verdict]}
            rows={result.calibration.map(({ level, enough, claimed, forecasts, verdict }) => ({
              key: String(level),
              name: writtenShare(level, language),
              cells: [
                writtenPerMille(forecasts === 0 ? 0 : (enough * 1000) / forecasts, language),
                writtenPerMille(claimed * 1000, language),
                whole(forecasts),
                words.verdicts[verdict],
              ],
            }))}
          />
        )}
      </Section>
      <Lines result={result} />
      <Section title={texts.plans.assumptions} hint={words.assumptionsHint}>
        <ul>
          {result.assumptions.map((assumption) => (
            <li key={`${assumption.code} ${assumption.message}`}>
              {reasonWords(texts, assumption, { unit: null, currency: result.currency })}
            </li>
          ))}
        </ul>
      </Section>
    </>
  );
}

function Lines({ result }: { result: ReplayResultView }) {
  const words = useTexts().replay;
  const list = useShown(result.lines);
  if (result.lines.length === 0) return null;
  return (
    <Section title={words.lines} hint={words.linesHint}>
      <Entries label={words.lines}>
        {list.shown.map((line) => (
          <Entry
            key={`${line.itemKind} ${line.itemKey}`}
            name={line.label}
            below={<LineTable line={line} currency={result.currency} />}
          />
        ))}
      </Entries>
      <MoreButton list={list} />
    </Section>
  );
}

function LineTable({ line, currency }: { line: ReplayItemView; currency: string }) {
  const texts = useTexts();
  const { language } = texts;
  const words = texts.replay;
  const units = (amount: number) => writtenUnits(amount, line.unit, texts);
  const money = (minor: number) => writtenMoney(minor, currency, language);
  const { minimumUnits, maximumUnits, byHand } = line.fixedLevels;
  const rows: [name: string, write: (one: ReplayOutcomeView) => string][] = [
    [words.shortDays, ({ shortDays }) => writtenNumber(shortDays, language)],
    [words.unmet, ({ unmetUnits }) => units(unmetUnits)],
    [words.waste, ({ wasteUnits, wasteMinor }) => `${units(wasteUnits)}, ${money(wasteMinor)}`],
    [words.orders, ({ orders }) => writtenNumber(orders, language)],
    [words.cost, ({ costMinor }) => money(costMinor)],
    [words.leftWorth, ({ endUnits, endMinor }) => `${units(endUnits)}, ${money(endMinor)}`],
  ];
  return (
    <>
      <p>
        {words.needed(units(line.neededUnits), writtenDay(line.from, language))}{' '}
        {words.levels(units(minimumUnits), units(maximumUnits), byHand)}
      </p>
      <NumbersTable
        label={line.label}
        first={words.what}
        columns={ways.map((way) => words.ways[way])}
        rows={rows.map(([name, write]) => ({ key: name, name, cells: ways.map((way) => write(line[way])) }))}
      />
    </>
  );
}
