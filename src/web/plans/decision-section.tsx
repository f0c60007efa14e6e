import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { LineDecision } from '../../reorder/plan/vocabulary.js';
import { PageLink } from '../frame/navigation.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { pathOf } from '../frame/places.js';
import { Section } from '../frame/section.js';
import { useTexts } from '../texts/texts.js';
import { PlanLineEntry } from './plan-line-entry.js';
import { usePlanLines } from './plans.requests.js';

/** The lines of a plan of which one thing was decided. */
export function DecisionSection({
  standing: { studioId, permissions },
  planId,
  decision,
}: {
  standing: StandingView;
  planId: string;
  decision: LineDecision;
}) {
  const texts = useTexts();
  const words = texts.plans;
  const list = usePlanLines(studioId, planId, decision);
  return (
    <Section title={words.sections[decision]} hint={words.sectionHints[decision]}>
      <PagedEntries
        label={words.sections[decision]}
        list={list}
        none={null}
        entry={(line) => (
          <PlanLineEntry key={line.lineNumber} studioId={studioId} planId={planId} line={line} />
        )}
      />
      {decision === 'cannot be ordered' && permissions.includes('plan orders') && (
        <PageLink to={pathOf({ studioId, area: 'ordering' }, 'suppliers')} alone>
          {words.addOffer}
        </PageLink>
      )}
    </Section>
  );
}
