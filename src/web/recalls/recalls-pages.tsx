import { lazy } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { type AreaPage, AreaPages } from '../frame/area-pages.js';
import { QualityPage } from './chain/quality-page.js';
import { StudiosPage } from './chain/studios-page.js';
import { DrillsPage } from './drills/drills-page.js';
import { NoticesPage } from './inbox/notices-page.js';
import { OverviewPage } from './overview/overview-page.js';
import { RecallsPage } from './recalls-page.js';

/** Reading a notice and settling what it means is seldom, and brings much along. */
const AnswerPage = lazy(async () => ({ default: (await import('./opening/answer-page.js')).AnswerPage }));
const AmendPage = lazy(async () => ({ default: (await import('./opening/amend-page.js')).AmendPage }));

/** Answering it page by page comes after looking at it. */
const ContainersPage = lazy(async () => ({
  default: (await import('./answering/containers/containers-page.js')).ContainersPage,
}));
const BalancePage = lazy(async () => ({
  default: (await import('./answering/balance/balance-page.js')).BalancePage,
}));

const ExposuresPage = lazy(async () => ({
  default: (await import('./answering/exposures/exposures-page.js')).ExposuresPage,
}));
const TellingPage = lazy(async () => ({
  default: (await import('./answering/telling/telling-page.js')).TellingPage,
}));
const ClosingPage = lazy(async () => ({
  default: (await import('./answering/closing/closing-page.js')).ClosingPage,
}));

const pages: readonly AreaPage[] = [
  { path: 'all', name: (texts) => texts.recalls.pages.recalls, needs: 'read recalls', Open: RecallsPage },
  { path: 'notices', name: (texts) => texts.recalls.pages.notices, needs: 'read recalls', Open: NoticesPage },
  { path: 'drills', name: (texts) => texts.recalls.pages.drills, needs: 'read recalls', Open: DrillsPage },
  { path: 'quality', name: (texts) => texts.recalls.pages.quality, needs: 'read recalls', Open: QualityPage },
  { path: 'answer', needs: 'answer recalls', Open: AnswerPage },
  { path: ':id', needs: 'read recalls', Open: OverviewPage },
  { path: ':id/amend', needs: 'answer recalls', Open: AmendPage },
  { path: ':id/containers', needs: 'read recalls', Open: ContainersPage },
  { path: ':id/exposures', needs: 'read recalls', Open: ExposuresPage },
  { path: ':id/telling', needs: 'read recalls', Open: TellingPage },
  { path: ':id/balance', needs: 'read recalls', Open: BalancePage },
  { path: ':id/closing', needs: 'read recalls', Open: ClosingPage },
  { path: ':id/studios', needs: 'answer recalls of the chain', Open: StudiosPage },
];

/** What was called back, and the answer to it. */
export function RecallsPages({ standing }: { standing: StandingView }) {
  return <AreaPages area="recalls" standing={standing} pages={pages} />;
}
