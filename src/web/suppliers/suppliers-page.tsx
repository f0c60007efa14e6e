import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { Page } from '../frame/page.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { pathOf } from '../frame/places.js';
import { Section } from '../frame/section.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { SupplierEntry } from './supplier-entry.js';
import { listTerms } from './suppliers.requests.js';

/** Who sells to the studio, and on what terms. */
export function SuppliersPage({ standing }: { standing: StandingView }) {
  const words = useTexts().suppliers;
  const { studioId, studioName, permissions } = standing;
  const list = usePages(['supplier terms', studioId], (after) => listTerms(studioId, after));
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.list} hint={words.listHint}>
        <PagedEntries
          label={words.list}
          list={list}
          none={words.none}
          entry={(terms) => <SupplierEntry key={terms.supplierId} studioId={studioId} terms={terms} />}
        />
        {permissions.includes('change the register') && (
          <PageLink to={pathOf({ studioId, area: 'settings' }, 'companies')} alone>
            {words.toRegister}
          </PageLink>
        )}
      </Section>
    </Page>
  );
}
