import { type ComponentType, lazy } from 'react';
import { Navigate, Route, Routes } from 'react-router';
import type { Permission } from '../../identity/permissions.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PeoplePage } from '../access/people-page.js';
import { ProgramsPage } from '../access/programs-page.js';
import { TabletsPage } from '../access/tablets-page.js';
import { CompaniesPage } from '../catalogue/companies-page.js';
import { ConfigurationsPage } from '../catalogue/configurations-page.js';
import { ProductsPage } from '../catalogue/products-page.js';
import { GuardedPage } from '../frame/guarded-page.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { pathOf } from '../frame/places.js';
import { SubPages } from '../frame/sub-pages.js';
import { useTexts } from '../texts/texts.js';
import { PlacesPage } from './places-page.js';
import { ProceduresPage } from './procedures/procedures-page.js';
import { StudioPage } from './studio/studio-page.js';
import { ThresholdsPage } from './thresholds-page.js';

/** Files are brought once or seldom. */
const BookingsPage = lazy(async () => ({
  default: (await import('../taking-in/bookings/bookings-page.js')).BookingsPage,
}));

/** The pages of settings in the order of their menu, each for whoever may do this. */
const pages = [
  { path: 'studio', needs: 'see the studio', Open: StudioPage },
  { path: 'people', needs: 'manage people', Open: PeoplePage },
  { path: 'tablets', needs: 'enrol tablets', Open: TabletsPage },
  { path: 'programs', needs: 'issue tokens', Open: ProgramsPage },
  { path: 'products', needs: 'change the register', Open: ProductsPage },
  { path: 'companies', needs: 'change the register', Open: CompaniesPage },
  { path: 'configurations', needs: 'change the register', Open: ConfigurationsPage },
  { path: 'places', needs: 'handle stock', Open: PlacesPage },
  { path: 'procedures', needs: 'read sessions', Open: ProceduresPage },
  { path: 'bookings', needs: 'take in bookings', Open: BookingsPage },
  { path: 'thresholds', needs: 'see the studio', Open: ThresholdsPage },
] as const satisfies {
  path: string;
  needs: Permission;
  Open: ComponentType<{ standing: StandingView }>;
}[];

/** Who works here and how things are kept. */
export function SettingsPages({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const place = { studioId: standing.studioId, area: 'settings' } as const;
  const offered = pages.filter(({ needs }) => standing.permissions.includes(needs));
  const [first] = offered;
  return (
    <>
      <SubPages
        label={texts.frame.settings}
        pages={offered.map(({ path }) => ({ to: pathOf(place, path), name: texts.settings.pages[path] }))}
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
        <Route path="*" element={<NoSuchPage />} />
      </Routes>
    </>
  );
}
