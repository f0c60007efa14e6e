import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Page } from '../frame/page.js';
import { useTexts } from '../texts/texts.js';

/** What happened: sessions, clients, and who wrote what. */
export function RecordsPages({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  return <Page above={standing.studioName} title={texts.records.title} />;
}
