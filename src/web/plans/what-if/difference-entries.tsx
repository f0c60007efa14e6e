import type { PlanLineSummaryView } from '../../../reorder/plan/plans.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { MoreButton } from '../../frame/more-button.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { Section } from '../../frame/section.js';
import { useShown } from '../../stock/use-shown.js';
import type { Texts } from '../../texts/en/english.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { writtenChance } from '../figures/written-chance.js';
import { writtenMoney } from '../figures/written-money.js';
import { writtenUnits } from '../figures/written-units.js';
import { NumbersTable } from '../numbers-table.js';
import { type PlanDifference, planDifferences } from './plan-differences.js';

/** What would be decided otherwise, item by item; of one item also where nothing would. */
export function DifferenceEntries({
  studioId,
  planId,
  before,
  after,
  isOfOne,
}: {
  studioId: string;
  planId: string;
  before: readonly PlanLineSummaryView[];
  after: readonly PlanLineSummaryView[];
  isOfOne: boolean;
}) {
  const words = useTexts().whatIf;
  const differences = planDifferences(before, after);
  const [only] = after;
  const known = before.find(({ item }) => only && item.kind === only.item.kind && item.key === only.item.key);
  const shown =
    differences.length === 0 && isOfOne && only ? [{ before: known ?? null, after: only }] : differences;
  const list = useShown(shown);
  return (
    <Section title={words.differences} hint={words.differencesHint}>
      {differences.length === 0 && <p role="status">{words.noDifference}</p>}
      {list.shown.length > 0 && (
        <Entries label={words.differences}>
          {list.shown.map((both) => (
            <Entry
              key={both.after.lineNumber}
              name={
                <PageLink
                  to={pathOf(
                    { studioId, area: 'ordering' },
                    'plan',
                    planId,
                    'lines',
                    String(both.after.lineNumber),
                  )}
                  alone
                >
                  {both.after.item.label}
                </PageLink>
              }
              below={<BesideEachOther both={both} />}
            />
          ))}
        </Entries>
      )}
      <MoreButton list={list} />
    </Section>
  );
}

function BesideEachOther({ both: { before, after } }: { both: PlanDifference<PlanLineSummaryView> }) {
  const texts = useTexts();
  const words = texts.whatIf;
  const rows = rowsOf(texts);
  return (
    <NumbersTable
      label={after.item.label}
      first={words.what}
      columns={[words.asPlanned, words.whatIf]}
      rows={rows.map(([name, write]) => ({
        key: name,
        name,
        cells: [before === null ? texts.planLine.none : write(before), write(after)],
      }))}
    />
  );
}

function rowsOf(texts: Texts): [name: string, write: (line: PlanLineSummaryView) => string][] {
  const { plans, planLine, whatIf: words, language } = texts;
  const money = (minor: number | null, currency: string | null) =>
    minor === null || currency === null ? planLine.none : writtenMoney(minor, currency, language);
  return [
    [planLine.decision, ({ decision }) => plans.decisions[decision]],
    [
      plans.figures.order,
      ({ packs, orderedUnits, item }) =>
        packs === 0
          ? planLine.nothing
          : `${plans.packs(packs)}, ${writtenUnits(orderedUnits, item.unit, texts)}`,
    ],
    [planLine.orderOn, ({ orderOn }) => (orderOn === null ? planLine.none : writtenDay(orderOn, language))],
    [
      plans.figures.cost,
      ({ packs, costMinor, currency }) => (packs === 0 ? planLine.none : money(costMinor, currency)),
    ],
    [words.shortWithout, ({ shortChance }) => writtenChance(shortChance, texts)],
    [words.shortAfter, ({ shortChanceAfter }) => writtenChance(shortChanceAfter, texts)],
    [planLine.wasteMoney, ({ expectedWasteMinor, currency }) => money(expectedWasteMinor, currency)],
  ];
}
