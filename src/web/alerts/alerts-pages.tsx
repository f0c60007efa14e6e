import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { type AreaPage, AreaPages } from '../frame/area-pages.js';
import { AlertsPage } from './list/alerts-page.js';
import { MorningPage } from './morning/morning-page.js';
import { NotSentPage } from './not-sent/not-sent-page.js';
import { AlertPage } from './one/alert-page.js';

const pages: readonly AreaPage[] = [
  { path: 'all', name: (texts) => texts.alertPages.pages.all, needs: 'see alerts', Open: AlertsPage },
  {
    path: 'morning',
    name: (texts) => texts.alertPages.pages.morning,
    needs: 'see alerts',
    Open: MorningPage,
  },
  {
    path: 'not-sent',
    name: (texts) => texts.alertPages.pages.notSent,
    needs: 'see alerts',
    Open: NotSentPage,
  },
  { path: ':id', needs: 'see alerts', Open: AlertPage },
];

/** What has to be seen to, and who was told of it. */
export function AlertsPages({ standing }: { standing: StandingView }) {
  return <AreaPages area="alerts" standing={standing} pages={pages} />;
}
