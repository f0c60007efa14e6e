import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Page } from '../frame/page.js';
import { useTexts } from '../texts/texts.js';

/** What the latest plan says is to be ordered. */
export function PlanPage({ standing: { studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  return <Page above={studioName} title={texts.plans.title} />;
}
