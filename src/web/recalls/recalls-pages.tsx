import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { type AreaPage, AreaPages } from '../frame/area-pages.js';
import { RecallsPage } from './recalls-page.js';

const pages: readonly AreaPage[] = [
  {
    path: 'all',
    name: (texts) => texts.recalls.pages.recalls,
    needs: 'read recalls',
    Open: RecallsPage,
  },
];

/** What was called back, and the answer to it. */
export function RecallsPages({ standing }: { standing: StandingView }) {
  return <AreaPages area="recalls" standing={standing} pages={pages} />;
}
