import type { PlanLineSummaryView } from '../../reorder/plan/plans.views.js';
import type { LineDecision } from '../../reorder/plan/vocabulary.js';
import { Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { type Figure, Figures } from '../stock/figures.js';
import { Sign, type Standing } from '../stock/sign.js';
import type { Texts } from '../texts/en/english.js';
import { useTexts } from '../texts/texts.js';
import { writtenChance } from './figures/written-chance.js';
import { writtenUnits } from './figures/written-units.js';
import { lineSentence } from './line-sentence.js';
import styles from './plans.module.css';

export const standingOf: Record<LineDecision, Standing> = {
  'order now': 'care',
  'order later': 'good',
  'order for the appointment': 'good',
  'let run out': 'over',
  enough: 'good',
  'cannot be ordered': 'fault',
};

/** One line of a plan in a list: what was decided of an item, why in a sentence, and the figures that count. */
export function LineEntry({
  path,
  label,
  decision,
  remarks,
  line,
  figures,
}: {
  path: string;
  label: string;
  decision: LineDecision;
  remarks: readonly string[];
  /** Undefined: it is not known yet. */
  line: PlanLineSummaryView | undefined;
  figures: readonly Figure[];
}) {
  const texts = useTexts();
  return (
    <Entry
      name={
        <PageLink to={path} alone>
          {label}
        </PageLink>
      }
    >
      <p>
        <Sign standing={standingOf[decision]}>{texts.plans.decisions[decision]}</Sign>
        {remarks.join(', ')}
      </p>
      {line && <p className={styles.sentence}>{lineSentence(line, texts)}</p>}
      <Figures figures={figures} />
    </Entry>
  );
}

export function pathOfLine(studioId: string, planId: string, lineNumber: number): string {
  return pathOf({ studioId, area: 'ordering' }, 'plan', planId, 'lines', String(lineNumber));
}

/** What a manager should know besides, in brief. */
export function remarksOf({ notes }: PlanLineSummaryView, { plans }: Texts): string[] {
  return notes.flatMap((code) => plans.notes[code] ?? []);
}

/** What is here, comes and is needed, and whether that is enough. */
export function stockFigures(line: PlanLineSummaryView, texts: Texts): Figure[] {
  const { item, usableUnits, onTheWayUnits, unitsPerWeek, shortChance } = line;
  const words = texts.plans.figures;
  const units = (amount: number) => writtenUnits(amount, item.unit, texts);
  return [
    { name: words.here, value: units(usableUnits) },
    ...(onTheWayUnits > 0 ? [{ name: words.onTheWay, value: units(onTheWayUnits) }] : []),
    { name: words.weekly, value: units(unitsPerWeek) },
    { name: words.short, value: writtenChance(shortChance, texts) },
  ];
}
