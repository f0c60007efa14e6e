import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Page } from '../frame/page.js';
import { useTexts } from '../texts/texts.js';

/** What is being called back, and what is outstanding of it. */
export function RecallsPage({ standing: { studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  return <Page above={studioName} title={texts.recalls.title} lead={texts.recalls.lead} />;
}
