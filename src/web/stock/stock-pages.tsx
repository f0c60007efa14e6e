import { lazy } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { type AreaPage, AreaPages } from '../frame/area-pages.js';
import { DeliveriesPage } from '../receiving/deliveries/deliveries-page.js';
import { DeliveryPage } from '../receiving/deliveries/delivery-page.js';
import { LabelsPage } from '../receiving/labels/labels-page.js';
import { ReceivePage } from '../receiving/receive-page.js';
import { ContainerPage } from './containers/container-page.js';
import { ContainersPage } from './containers/containers-page.js';
import { ExpectedPage } from './expected/expected-page.js';
import { HoldsPage } from './holds/holds-page.js';
import { LevelsPage } from './levels/levels-page.js';
import { LotPage } from './lots/lot-page.js';
import { LotsPage } from './lots/lots-page.js';

/** Files are brought once or seldom. */
const OpeningStockPage = lazy(async () => ({
  default: (await import('../taking-in/opening-stock/opening-stock-page.js')).OpeningStockPage,
}));
/** Drawing is loaded when a trace is first opened. */
const LotTracePage = lazy(async () => ({ default: (await import('./trace/trace-page.js')).LotTracePage }));
const SessionTracePage = lazy(async () => ({
  default: (await import('./trace/trace-page.js')).SessionTracePage,
}));

const pages: readonly AreaPage[] = [
  { path: 'levels', name: (texts) => texts.levels.title, needs: 'read stock', Open: LevelsPage },
  { path: 'lots', name: (texts) => texts.lots.title, needs: 'read stock', Open: LotsPage },
  { path: 'containers', name: (texts) => texts.containers.title, needs: 'read stock', Open: ContainersPage },
  { path: 'holds', name: (texts) => texts.holds.title, needs: 'read stock', Open: HoldsPage },
  { path: 'receive', name: (texts) => texts.receiving.title, needs: 'receive stock', Open: ReceivePage },
  { path: 'deliveries', name: (texts) => texts.deliveries.title, needs: 'read stock', Open: DeliveriesPage },
  { path: 'expected', name: (texts) => texts.expected.title, needs: 'read stock', Open: ExpectedPage },
  {
    path: 'opening-stock',
    name: (texts) => texts.openingStock.title,
    needs: 'take in opening stock',
    Open: OpeningStockPage,
  },
  { path: 'labels', name: (texts) => texts.labels.title, needs: 'print labels', Open: LabelsPage },
  { path: 'lots/:id', needs: 'read stock', Open: LotPage },
  { path: 'lots/:id/trace', needs: 'trace', Open: LotTracePage },
  { path: 'sessions/:id/trace', needs: 'trace', Open: SessionTracePage },
  { path: 'containers/:id', needs: 'read stock', Open: ContainerPage },
  { path: 'deliveries/:id', needs: 'read stock', Open: DeliveryPage },
];

/** What lies on the shelves. */
export function StockPages({ standing }: { standing: StandingView }) {
  return <AreaPages area="stock" standing={standing} pages={pages} />;
}
