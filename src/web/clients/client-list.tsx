import { localDay } from '../../identity/local-day.js';
import { Entries, Entry } from '../frame/entries.js';
import { MoreButton } from '../frame/more-button.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
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
    <>
      <ProblemNote problem={list.problem} />
      {list.items === undefined && list.problem === undefined && <p role="status">{texts.app.loading}</p>}
      {list.items?.length === 0 && <p>{texts.clients.none}</p>}
      {list.items !== undefined && list.items.length > 0 && (
        <Entries label={texts.clients.list}>
          {list.items.map(({ id, reference, createdAt, erasedAt }) => (
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
          ))}
        </Entries>
      )}
      <MoreButton list={list} />
    </>
  );
}
