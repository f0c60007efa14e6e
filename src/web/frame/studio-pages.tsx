import { type ComponentType, lazy } from 'react';
import { useLocation } from 'react-router';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { useStanding } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { NoSuchPage } from './no-such-page.js';
import { Page } from './page.js';
import { areasOf, placeOf, type StudioArea } from './places.js';

/** Each area is loaded when it is first opened; its own file says which pages it has. */
const areas: Record<StudioArea, ComponentType<{ standing: StandingView }>> = {
  today: lazy(async () => ({ default: (await import('../today/today-pages.js')).TodayPages })),
  stock: lazy(async () => ({ default: (await import('../stock/stock-pages.js')).StockPages })),
  records: lazy(async () => ({ default: (await import('../records/records-pages.js')).RecordsPages })),
  settings: lazy(async () => ({ default: (await import('../settings/settings-pages.js')).SettingsPages })),
};

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
