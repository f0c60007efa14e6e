import { Button, Group } from '@mantine/core';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { saveFile } from '../service/save-file.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { exportClient, exportClientToRead } from './clients.requests.js';

/** Everything kept of a client, as files named by the reference. */
export function HandOutSection({
  studioId,
  clientId,
  reference,
}: {
  studioId: string;
  clientId: string;
  reference: string;
}) {
  const texts = useTexts();
  const toRead = useAction(async () =>
    saveFile(await exportClientToRead(studioId, clientId), `client-${reference}.html`),
  );
  const forMachine = useAction(async () =>
    saveFile(await exportClient(studioId, clientId), `client-${reference}.json`),
  );
  return (
    <Section title={texts.client.copy} hint={texts.client.copyHint}>
      <ProblemNote problem={toRead.problem ?? forMachine.problem} />
      <Group gap="sm">
        <Button variant="default" loading={toRead.busy} onClick={() => void toRead.run()}>
          {texts.client.copyToRead}
        </Button>
        <Button variant="default" loading={forMachine.busy} onClick={() => void forMachine.run()}>
          {texts.client.copyForMachine}
        </Button>
      </Group>
    </Section>
  );
}
