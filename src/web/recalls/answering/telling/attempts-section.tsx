import type { ContactView } from '../../../../recalls/contacts/contacts.views.js';
import type { ContactAudience } from '../../../../recalls/vocabulary.js';
import { Entry } from '../../../frame/entries.js';
import { PagedEntries } from '../../../frame/paged-entries.js';
import { Section } from '../../../frame/section.js';
import { useStudioInstants } from '../../../frame/use-studio-instants.js';
import { usePeople } from '../../../service/studio-answers.js';
import { usePages } from '../../../service/use-pages.js';
import { useTexts } from '../../../texts/texts.js';
import { listAttempts } from './telling.requests.js';

/** Every attempt to tell somebody of an audience. */
export function AttemptsSection({
  studioId,
  recallId,
  audience,
}: {
  studioId: string;
  recallId: string;
  audience: ContactAudience;
}) {
  const texts = useTexts();
  const words = texts.recallTelling;
  const when = useStudioInstants(studioId);
  const people = usePeople(studioId).answer;
  const list = usePages(['attempts of recall', studioId, recallId, audience], (after) =>
    listAttempts(studioId, recallId, audience, after),
  );
  const personOf = (id: string | null) =>
    people?.find((person) => person.id === id)?.name ?? texts.records.unknownPerson;
  const whoOf = ({ company, artistId, clientReference }: ContactView) =>
    company ?? clientReference ?? personOf(artistId);
  return (
    <Section title={words.tried} hint={words.triedHint}>
      <PagedEntries
        label={words.tried}
        list={list}
        none={words.noneTried}
        entry={(contact) => (
          <Entry key={contact.id} name={whoOf(contact)}>
            <p>
              {words.attempt(
                when(contact.occurredAt),
                words.channels[contact.channel],
                words.outcomes[contact.outcome],
                personOf(contact.personId),
              )}
            </p>
            {contact.note !== null && <p>{contact.note}</p>}
          </Entry>
        )}
      />
    </Section>
  );
}
