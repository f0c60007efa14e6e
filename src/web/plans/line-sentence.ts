import type { PlanLineSummaryView } from '../../reorder/plan/plans.views.js';
import type { Texts } from '../texts/en/english.js';
import { writtenDay } from '../texts/written-dates.js';
import { writtenChance } from './figures/written-chance.js';
import { writtenMoney } from './figures/written-money.js';
import { writtenUnits } from './figures/written-units.js';

/** Why a line is as it is, in the language of the reader. */
export function lineSentence(line: PlanLineSummaryView, texts: Texts): string {
  const say = texts.planSentences[line.decision];
  const { item, orderOn, shortOn } = line;
  const day = (date: string | null) => (date === null ? null : writtenDay(date, texts.language));
  return say({
    here: writtenUnits(line.usableUnits, item.unit, texts),
    onTheWay: line.onTheWayUnits > 0 ? writtenUnits(line.onTheWayUnits, item.unit, texts) : null,
    weekly: writtenUnits(line.unitsPerWeek, item.unit, texts),
    ordered: line.packs === 0 ? null : writtenUnits(line.orderedUnits, item.unit, texts),
    on: day(orderOn),
    short: writtenChance(line.shortChance, texts),
    shortOn: day(shortOn.middle),
    shortAfter: writtenChance(line.shortChanceAfter, texts),
    waste:
      line.currency === null || line.expectedWasteMinor < 1
        ? null
        : writtenMoney(line.expectedWasteMinor, line.currency, texts.language),
    days: new Intl.NumberFormat(texts.language, { maximumFractionDigits: 0 }).format(
      Math.round(line.coverDays),
    ),
    isLate: line.notes.includes('too late'),
    isUnneeded: line.notes.includes('no need'),
    isOneDay: Math.round(line.coverDays) === 1,
  });
}
