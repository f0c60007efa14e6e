import { lazy } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PeoplePage } from '../access/people-page.js';
import { ProgramsPage } from '../access/programs-page.js';
import { TabletsPage } from '../access/tablets-page.js';
import { CompaniesPage } from '../catalogue/companies-page.js';
import { ConfigurationsPage } from '../catalogue/configurations-page.js';
import { ProductsPage } from '../catalogue/products-page.js';
import { type AreaPage, AreaPages } from '../frame/area-pages.js';
import { ChannelsPage } from './channels/channels-page.js';
import { PlacesPage } from './places-page.js';
import { ProceduresPage } from './procedures/procedures-page.js';
import { StudioPage } from './studio/studio-page.js';
import { ThresholdsPage } from './thresholds-page.js';

/** Files are brought once or seldom. */
const BookingsPage = lazy(async () => ({
  default: (await import('../taking-in/bookings/bookings-page.js')).BookingsPage,
}));

/** Set once, seldom changed. */
const PlanningPage = lazy(async () => ({
  default: (await import('./planning/planning-page.js')).PlanningPage,
}));

const pages: readonly AreaPage[] = [
  { path: 'studio', name: (texts) => texts.settings.pages.studio, needs: 'see the studio', Open: StudioPage },
  { path: 'people', name: (texts) => texts.settings.pages.people, needs: 'manage people', Open: PeoplePage },
  {
    path: 'tablets',
    name: (texts) => texts.settings.pages.tablets,
    needs: 'enrol tablets',
    Open: TabletsPage,
  },
  {
    path: 'programs',
    name: (texts) => texts.settings.pages.programs,
    needs: 'issue tokens',
    Open: ProgramsPage,
  },
  {
    path: 'products',
    name: (texts) => texts.settings.pages.products,
    needs: 'change the register',
    Open: ProductsPage,
  },
  {
    path: 'companies',
    name: (texts) => texts.settings.pages.companies,
    needs: 'change the register',
    Open: CompaniesPage,
  },
  {
    path: 'configurations',
    name: (texts) => texts.settings.pages.configurations,
    needs: 'change the register',
    Open: ConfigurationsPage,
  },
  { path: 'places', name: (texts) => texts.settings.pages.places, needs: 'handle stock', Open: PlacesPage },
  {
    path: 'procedures',
    name: (texts) => texts.settings.pages.procedures,
    needs: 'read sessions',
    Open: ProceduresPage,
  },
  {
    path: 'bookings',
    name: (texts) => texts.settings.pages.bookings,
    needs: 'take in bookings',
    Open: BookingsPage,
  },
  {
    path: 'thresholds',
    name: (texts) => texts.settings.pages.thresholds,
    needs: 'see the studio',
    Open: ThresholdsPage,
  },
  {
    path: 'planning',
    name: (texts) => texts.planning.page,
    needs: 'plan orders',
    Open: PlanningPage,
  },
  {
    path: 'channels',
    name: (texts) => texts.settings.pages.channels,
    needs: 'change alert channels',
    Open: ChannelsPage,
  },
];

/** Who works here and how things are kept. */
export function SettingsPages({ standing }: { standing: StandingView }) {
  return <AreaPages area="settings" standing={standing} pages={pages} />;
}
