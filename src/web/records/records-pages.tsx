import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { ClientPage } from '../clients/client-page.js';
import { ClientsPage } from '../clients/clients-page.js';
import { type AreaPage, AreaPages } from '../frame/area-pages.js';
import { AuditLogPage } from './audit-log-page.js';
import { BackupsPage } from './backups-page.js';
import { LateVisitPage } from './late-visit-page.js';
import { PlanPage } from './plan-page.js';
import { RetentionPage } from './retention-page.js';
import { SessionPage } from './session-page.js';
import { SessionsPage } from './sessions-page.js';

const pages: readonly AreaPage[] = [
  {
    path: 'sessions',
    name: (texts) => texts.records.pages.sessions,
    needs: 'read sessions',
    Open: SessionsPage,
  },
  { path: 'sessions/plan', needs: 'plan sessions', Open: PlanPage },
  { path: 'sessions/late', needs: 'record late', Open: LateVisitPage },
  { path: 'sessions/:id', needs: 'read sessions', Open: SessionPage },
  { path: 'clients', name: (texts) => texts.records.pages.clients, needs: 'read clients', Open: ClientsPage },
  { path: 'clients/:id', needs: 'read sessions', Open: ClientPage },
  { path: 'log', name: (texts) => texts.records.pages.log, needs: 'read the audit log', Open: AuditLogPage },
  { path: 'backups', name: (texts) => texts.records.pages.backups, needs: 'see backups', Open: BackupsPage },
  {
    path: 'retention',
    name: (texts) => texts.records.pages.retention,
    needs: 'erase clients',
    Open: RetentionPage,
  },
];

/** What happened: sessions, clients, and who wrote what. */
export function RecordsPages({ standing }: { standing: StandingView }) {
  return <AreaPages area="records" standing={standing} pages={pages} />;
}
