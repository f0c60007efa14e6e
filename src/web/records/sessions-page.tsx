import { Group } from '@mantine/core';
import { useSearchParams } from 'react-router';
import { localDay } from '../../identity/local-day.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { type SessionState, sessionStates } from '../../sessions/vocabulary.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { useTexts } from '../texts/texts.js';
import { OneClientFilter } from './one-client-filter.js';
import type { SessionFilters as Filters } from './records.requests.js';
import { SessionFilters } from './session-filters.js';
import { SessionList } from './session-list.js';
import { StudioPage } from './studio-page.js';

/** Every session of the studio, by day, state, artist or client. What is filtered by stands in the address: ids and days only. */
export function SessionsPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  return (
    <StudioPage standing={standing} title={texts.sessionList.title} lead={texts.sessionList.lead}>
      {(timeZone) => <Sessions standing={standing} timeZone={timeZone} />}
    </StudioPage>
  );
}

function Sessions({ standing, timeZone }: { standing: StandingView; timeZone: string }) {
  const texts = useTexts();
  const [search, setSearch] = useSearchParams();
  const { studioId, permissions } = standing;
  const filters = filtersOf(search, localDay(new Date().toISOString(), timeZone));
  const show = (changed: Filters) => setSearch(searchOf(changed));
  return (
    <>
      <Group gap="xl" mb="md">
        {permissions.includes('plan sessions') && (
          <PageLink to={pathOf({ studioId, area: 'records' }, 'sessions', 'plan')} alone>
            {texts.sessionList.plan}
          </PageLink>
        )}
        {permissions.includes('record late') && (
          <PageLink to={pathOf({ studioId, area: 'records' }, 'sessions', 'late')} alone>
            {texts.lateVisit.title}
          </PageLink>
        )}
      </Group>
      <SessionFilters key={search.toString()} standing={standing} filters={filters} onShow={show} />
      <OneClientFilter
        standing={standing}
        clientId={filters.clientId}
        onShow={(clientId) => show({ clientId })}
        onAll={() => show({})}
      />
      <SessionList standing={standing} timeZone={timeZone} filters={filters} />
    </>
  );
}

/** Without a word in the address: today and what comes; of one client: everything. */
function filtersOf(search: URLSearchParams, today: string): Filters {
  const get = (name: string) => search.get(name) ?? undefined;
  const state = get('state');
  const clientId = get('client');
  return {
    from: get('from') ?? (search.size === 0 ? today : undefined),
    to: get('to'),
    state: sessionStates.find((known) => known === state) as SessionState | undefined,
    artistId: get('artist'),
    clientId,
  };
}

function searchOf({ from, to, state, artistId, clientId }: Filters): Record<string, string> {
  const given = { from, to, state, artist: artistId, client: clientId };
  return Object.fromEntries(
    Object.entries(given).flatMap(([name, value]) =>
      value === undefined || value === '' ? [] : [[name, value]],
    ),
  );
}
