import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Page } from '../frame/page.js';
import { useTexts } from '../texts/texts.js';

/** What lies on the shelves. */
export function StockPages({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  return <Page above={standing.studioName} title={texts.stock.title} />;
}
