import { localDay } from '../../identity/local-day.js';
import { Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { PagedEntries } from '../frame/paged-entries.js';
import { pathOf } from '../frame/places.js';
import { useStudio } from '../service/studio-answers.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { listClients } from './clients.requests.js';

/** All clients by their reference: who they are is told by their own page. */
export function ClientList({ studioId }: { studioId: string }) {
  const texts = useTexts();
  const timeZone = useStudio(studioId).answer?.timeZone ?? 'UTC';
  const list = usePages(['clients', studioId], (after) => listClients(studioId, after));
  return (
    <PagedEntries
      label={texts.clients.list}
      list={list}
      none={texts.clients.none}
      entry={({ id, reference, createdAt, erasedAt }) => (
        <Entry
          key={id}
          name={reference}
          mark={erasedAt === null ? undefined : texts.clients.erased}
          actions={
            <PageLink to={pathOf({ studioId, area: 'records' }, 'clients', id)} alone>
              {texts.clients.open(reference)}
            </PageLink>
          }
        >
          <p>{texts.clients.since(writtenDay(localDay(createdAt, timeZone), texts.language))}</p>
        </Entry>
      )}
    />
  );
}
