import { type ComponentType, lazy } from 'react';
import { useLocation } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { useStanding } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { NoSuchPage } from './no-such-page.js';
import { Page } from './page.js';
import { areasOf, placeOf, type StudioArea } from './places.js';

/** Each area is loaded when it is first opened; its own file says which pages it has. */
const loaders: Record<StudioArea, () => Promise<{ default: ComponentType<{ standing: StandingView }> }>> = {
  today: async () => ({ default: (await import('../today/today-pages.js')).TodayPages }),
  alerts: async () => ({ default: (await import('../alerts/alerts-pages.js')).AlertsPages }),
  stock: async () => ({ default: (await import('../stock/stock-pages.js')).StockPages }),
  ordering: async () => ({ default: (await import('../ordering/ordering-pages.js')).OrderingPages }),
  recalls: async () => ({ default: (await import('../recalls/recalls-pages.js')).RecallsPages }),
  records: async () => ({ default: (await import('../records/records-pages.js')).RecordsPages }),
  settings: async () => ({ default: (await import('../settings/settings-pages.js')).SettingsPages }),
};
const areas = {
  today: lazy(loaders.today),
  alerts: lazy(loaders.alerts),
  stock: lazy(loaders.stock),
  ordering: lazy(loaders.ordering),
  recalls: lazy(loaders.recalls),
  records: lazy(loaders.records),
  settings: lazy(loaders.settings),
};

/** Loads what a path will show while it is still being asked who is signed in. */
export function loadAhead(path: string): void {
  const place = placeOf(path);
  if (place) loaders[place.area]().catch(() => undefined);
}

/** The pages of a studio, for those whose role has a part in them. */
export function StudioPages() {
  const texts = useTexts();
  const place = placeOf(useLocation().pathname);
  const standing = useStanding(place?.studioId ?? '');
  if (!place || !standing) return <NoSuchPage />;
  if (!areasOf(standing.permissions).includes(place.area)) {
    return <Page above={standing.studioName} title={texts.app.notYours} lead={texts.app.notYoursDetail} />;
  }
  const Area = areas[place.area];
  return <Area key={place.studioId} standing={standing} />;
}
