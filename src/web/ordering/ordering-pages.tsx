import { lazy } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { type AreaPage, AreaPages } from '../frame/area-pages.js';
import { EarlierPage } from '../plans/earlier-page.js';
import { OnePlanPage } from '../plans/one-plan-page.js';
import { PlanPage } from '../plans/plan-page.js';

/** What suppliers offer is seen to now and then, and so are courses. */
const SuppliersPage = lazy(async () => ({
  default: (await import('../suppliers/suppliers-page.js')).SuppliersPage,
}));
const SupplierPage = lazy(async () => ({
  default: (await import('../suppliers/supplier-page.js')).SupplierPage,
}));
const CoursesPage = lazy(async () => ({
  default: (await import('../courses/courses-page.js')).CoursesPage,
}));

/** What was ordered is looked at when something comes of it. */
const OrdersPage = lazy(async () => ({ default: (await import('../orders/orders-page.js')).OrdersPage }));
const ClaimsPage = lazy(async () => ({ default: (await import('../claims/claims-page.js')).ClaimsPage }));
const OrderPage = lazy(async () => ({ default: (await import('../orders/order-page.js')).OrderPage }));

/** All that is known of one item, drawn. */
const LinePage = lazy(async () => ({ default: (await import('../plans/line/line-page.js')).LinePage }));

/** Asked now and then. */
const PlanLevelsPage = lazy(async () => ({
  default: (await import('../plans/levels/levels-page.js')).PlanLevelsPage,
}));
const WhatIfPage = lazy(async () => ({
  default: (await import('../plans/what-if/what-if-page.js')).WhatIfPage,
}));
const WhatIfResultPage = lazy(async () => ({
  default: (await import('../plans/what-if/what-if-result-page.js')).WhatIfResultPage,
}));
const ReplayPage = lazy(async () => ({
  default: (await import('../plans/replay/replay-page.js')).ReplayPage,
}));

const pages: readonly AreaPage[] = [
  { path: 'plan', name: (texts) => texts.plans.pages.plan, needs: 'read plans', Open: PlanPage },
  { path: 'what-if', name: (texts) => texts.plans.pages.whatIf, needs: 'read plans', Open: WhatIfPage },
  { path: 'orders', name: (texts) => texts.orders.page, needs: 'read plans', Open: OrdersPage },
  { path: 'claims', name: (texts) => texts.supplierClaims.page, needs: 'read plans', Open: ClaimsPage },
  {
    path: 'suppliers',
    name: (texts) => texts.suppliers.page,
    needs: 'read plans',
    Open: SuppliersPage,
  },
  { path: 'courses', name: (texts) => texts.courses.page, needs: 'read plans', Open: CoursesPage },
  { path: 'orders/:id', needs: 'read plans', Open: OrderPage },
  { path: 'suppliers/:id', needs: 'read plans', Open: SupplierPage },
  { path: 'replay', name: (texts) => texts.replay.page, needs: 'read plans', Open: ReplayPage },
  { path: 'plan/earlier', needs: 'read plans', Open: EarlierPage },
  { path: 'plan/:id', needs: 'read plans', Open: OnePlanPage },
  { path: 'plan/:id/lines/:line', needs: 'read plans', Open: LinePage },
  { path: 'plan/:id/levels', needs: 'set levels', Open: PlanLevelsPage },
  { path: 'what-if/:id', needs: 'read plans', Open: WhatIfResultPage },
];

/** What to order, how much and why; what was ordered, of whom, and on what terms. */
export function OrderingPages({ standing }: { standing: StandingView }) {
  return <AreaPages area="ordering" standing={standing} pages={pages} />;
}
