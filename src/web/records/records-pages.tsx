import { Navigate, Route, Routes } from 'react-router';
import type { Permission } from '../../identity/permissions.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { ClientPage } from '../clients/client-page.js';
import { ClientsPage } from '../clients/clients-page.js';
import { GuardedPage } from '../frame/guarded-page.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { pathOf } from '../frame/places.js';
import { SubPages } from '../frame/sub-pages.js';
import { useTexts } from '../texts/texts.js';
import { AuditLogPage } from './audit-log-page.js';
import { BackupsPage } from './backups-page.js';
import { LateVisitPage } from './late-visit-page.js';
import { PlanPage } from './plan-page.js';
import { RetentionPage } from './retention-page.js';
import { SessionPage } from './session-page.js';
import { SessionsPage } from './sessions-page.js';

type Name = 'sessions' | 'clients' | 'log' | 'backups' | 'retention';

/** The pages of records; those with a name stand in their menu, in this order. */
const pages = [
  { path: 'sessions', name: 'sessions', needs: 'read sessions', Open: SessionsPage },
  { path: 'sessions/plan', needs: 'plan sessions', Open: PlanPage },
  { path: 'sessions/late', needs: 'record late', Open: LateVisitPage },
  { path: 'sessions/:sessionId', needs: 'read sessions', Open: SessionPage },
  { path: 'clients', name: 'clients', needs: 'read clients', Open: ClientsPage },
  { path: 'clients/:clientId', needs: 'read sessions', Open: ClientPage },
  { path: 'log', name: 'log', needs: 'read the audit log', Open: AuditLogPage },
  { path: 'backups', name: 'backups', needs: 'see backups', Open: BackupsPage },
  { path: 'retention', name: 'retention', needs: 'erase clients', Open: RetentionPage },
] as const satisfies {
  path: string;
  name?: Name;
  needs: Permission;
  Open: (props: { standing: StandingView }) => unknown;
}[];

/** What happened: sessions, clients, and who wrote what. */
export function RecordsPages({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const place = { studioId: standing.studioId, area: 'records' } as const;
  return (
    <>
      <SubPages
        label={texts.frame.records}
        pages={pages.flatMap((page) =>
          'name' in page && standing.permissions.includes(page.needs)
            ? [{ to: pathOf(place, page.path), name: texts.records.pages[page.name] }]
            : [],
        )}
      />
      <Routes>
        <Route index element={<Navigate to="sessions" replace />} />
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
