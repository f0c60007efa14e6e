import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { PlanLineSummaryView } from '../../reorder/plan/plans.views.js';
import type { LineDecision } from '../../reorder/plan/vocabulary.js';
import { Entries } from '../frame/entries.js';
import { MoreButton } from '../frame/more-button.js';
import { Section } from '../frame/section.js';
import { useShown } from '../stock/use-shown.js';
import { useTexts } from '../texts/texts.js';
import { PlanLineEntry } from './plan-line-entry.js';

/** Lines that are known already and stand in no basket. */
export function LinesSection({
  standing: { studioId },
  planId,
  decision,
  lines,
}: {
  standing: StandingView;
  planId: string;
  decision: LineDecision;
  lines: readonly PlanLineSummaryView[];
}) {
  const words = useTexts().plans;
  const list = useShown(lines);
  if (lines.length === 0) return null;
  return (
    <Section title={words.sections[decision]} hint={words.sectionHints[decision]}>
      <Entries label={words.sections[decision]}>
        {list.shown.map((line) => (
          <PlanLineEntry key={line.lineNumber} studioId={studioId} planId={planId} line={line} />
        ))}
      </Entries>
      <MoreButton list={list} />
    </Section>
  );
}
