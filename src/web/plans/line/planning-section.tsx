import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { PlannedItemView } from '../../../reorder/plan/plans.views.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useStudio } from '../../service/studio-answers.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { findItemPlanning } from './item-planning.requests.js';
import { ItemPlanningForm } from './item-planning-form.js';

/** How this item is planned, where it differs from the studio. */
export function PlanningSection({ standing, item }: { standing: StandingView; item: PlannedItemView }) {
  const texts = useTexts();
  const words = texts.planLine;
  const { studioId } = standing;
  const studio = useStudio(studioId);
  const planning = useAnswer(['item planning', studioId, item.kind, item.key], () =>
    findItemPlanning(studioId, item),
  );
  return (
    <Section title={words.planning} hint={words.planningHint}>
      <ProblemNote problem={planning.problem ?? studio.problem} />
      {planning.answer !== undefined && studio.answer && (
        <ItemPlanningForm
          studioId={studioId}
          item={item}
          planning={planning.answer}
          currency={studio.answer.currency}
          reload={planning.reload}
        />
      )}
    </Section>
  );
}
