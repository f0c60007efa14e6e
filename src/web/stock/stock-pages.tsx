import { type ComponentType, lazy } from 'react';
import { Navigate, Route, Routes, useParams } from 'react-router';
import type { Permission } from '../../identity/permissions.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { GuardedPage } from '../frame/guarded-page.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { pathOf } from '../frame/places.js';
import { SubPages } from '../frame/sub-pages.js';
import { DeliveriesPage } from '../receiving/deliveries/deliveries-page.js';
import { DeliveryPage } from '../receiving/deliveries/delivery-page.js';
import { LabelsPage } from '../receiving/labels/labels-page.js';
import { ReceivePage } from '../receiving/receive-page.js';
import type { Texts } from '../texts/en/english.js';
import { useTexts } from '../texts/texts.js';
import { ContainerPage } from './containers/container-page.js';
import { ContainersPage } from './containers/containers-page.js';
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

/** The pages of stock in the order of their menu, each for whoever may do this. */
const pages = [
  { path: 'levels', name: (texts) => texts.levels.title, needs: 'read stock', Open: LevelsPage },
  { path: 'lots', name: (texts) => texts.lots.title, needs: 'read stock', Open: LotsPage },
  { path: 'containers', name: (texts) => texts.containers.title, needs: 'read stock', Open: ContainersPage },
  { path: 'holds', name: (texts) => texts.holds.title, needs: 'read stock', Open: HoldsPage },
  { path: 'receive', name: (texts) => texts.receiving.title, needs: 'receive stock', Open: ReceivePage },
  { path: 'deliveries', name: (texts) => texts.deliveries.title, needs: 'read stock', Open: DeliveriesPage },
  {
    path: 'opening-stock',
    name: (texts) => texts.openingStock.title,
    needs: 'take in opening stock',
    Open: OpeningStockPage,
  },
  { path: 'labels', name: (texts) => texts.labels.title, needs: 'print labels', Open: LabelsPage },
] as const satisfies {
  path: string;
  name: (texts: Texts) => string;
  needs: Permission;
  Open: ComponentType<{ standing: StandingView }>;
}[];

/** Pages of one thing: they stand in no menu. `id` is what the address ends with or names before its last word. */
const pagesOfOne: readonly {
  path: string;
  needs: Permission;
  Open: ComponentType<{ standing: StandingView; id: string }>;
}[] = [
  { path: 'lots/:id', needs: 'read stock', Open: LotPage },
  { path: 'lots/:id/trace', needs: 'trace', Open: LotTracePage },
  { path: 'sessions/:id/trace', needs: 'trace', Open: SessionTracePage },
  { path: 'containers/:id', needs: 'read stock', Open: ContainerPage },
  { path: 'deliveries/:id', needs: 'read stock', Open: DeliveryPage },
];

/** What lies on the shelves. */
export function StockPages({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const place = { studioId: standing.studioId, area: 'stock' } as const;
  const offered = pages.filter(({ needs }) => standing.permissions.includes(needs));
  const [first] = offered;
  return (
    <>
      <SubPages
        label={texts.frame.stock}
        pages={offered.map(({ path, name }) => ({ to: pathOf(place, path), name: name(texts) }))}
      />
      <Routes>
        {first && <Route index element={<Navigate to={first.path} replace />} />}
        {pages.map(({ path, needs, Open }) => (
          <Route
            key={path}
            path={path}
            element={
              <GuardedPage standing={standing} needs={needs}>
                <Open standing={standing} />
              </GuardedPage>
            }
          />
        ))}
        {pagesOfOne.map(({ path, needs, Open }) => (
          <Route
            key={path}
            path={path}
            element={
              <GuardedPage standing={standing} needs={needs}>
                <OfOne standing={standing} Open={Open} />
              </GuardedPage>
            }
          />
        ))}
        <Route path="*" element={<NoSuchPage />} />
      </Routes>
    </>
  );
}

function OfOne({
  standing,
  Open,
}: {
  standing: StandingView;
  Open: ComponentType<{ standing: StandingView; id: string }>;
}) {
  const { id = '' } = useParams();
  return <Open key={id} standing={standing} id={id} />;
}
