import { Button } from '@mantine/core';
import { useSearchParams } from 'react-router';
import { showClient } from '../clients/clients.requests.js';
import { FindClient } from '../clients/find-client.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';

/** Whose session is being written; the id stands in the address, so that a client's page can lead here. */
export function useClientOfSession(): string | undefined {
  const [search] = useSearchParams();
  return search.get('client') ?? undefined;
}

/** Finds the client of a session, then tells them by their reference. */
export function ClientOfSession({ studioId, clientId }: { studioId: string; clientId: string | undefined }) {
  const texts = useTexts();
  const [, setSearch] = useSearchParams();
  return (
    <Section title={texts.plan.client} hint={texts.plan.clientHint}>
      {clientId === undefined ? (
        <FindClient studioId={studioId} onChosen={({ id }) => setSearch({ client: id })} />
      ) : (
        <ChosenClient studioId={studioId} clientId={clientId} onOther={() => setSearch({})} />
      )}
    </Section>
  );
}

function ChosenClient({
  studioId,
  clientId,
  onOther,
}: {
  studioId: string;
  clientId: string;
  onOther: () => void;
}) {
  const texts = useTexts();
  const { answer, problem } = useAnswer(['client', studioId, clientId], () => showClient(studioId, clientId));
  return (
    <>
      <ProblemNote problem={problem} />
      {answer && <p>{texts.plan.chosenClient(answer.reference)}</p>}
      <Button variant="default" onClick={onOther}>
        {texts.plan.otherClient}
      </Button>
    </>
  );
}
