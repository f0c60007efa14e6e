import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { Page } from '../frame/page.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { pathOf } from '../frame/places.js';
import { Section } from '../frame/section.js';
import { useTexts } from '../texts/texts.js';
import { PlanRunEntry } from './plan-run-entry.js';
import { usePlans } from './plans.requests.js';

/** The plans that were made, whatever became of them. */
export function EarlierPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.plans;
  const { studioId, studioName } = standing;
  const list = usePlans(studioId, 'plan');
  return (
    <Page above={studioName} title={words.earlier}>
      <Section title={words.all} hint={words.earlierHint}>
        <PagedEntries
          label={words.earlier}
          list={list}
          none={words.noneEarlier}
          entry={(plan) => (
            <PlanRunEntry
              key={plan.id}
              studioId={studioId}
              plan={plan}
              path={pathOf({ studioId, area: 'ordering' }, 'plan', plan.id)}
            />
          )}
        />
        <PageLink to={pathOf({ studioId, area: 'ordering' }, 'plan')} alone>
          {words.toLatest}
        </PageLink>
      </Section>
    </Page>
  );
}
