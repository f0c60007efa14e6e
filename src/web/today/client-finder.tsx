import { Button, Group, Radio, Stack, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { ClientView } from '../../clients/clients.views.js';
import { findClients } from '../clients/clients.requests.js';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';

const longestText = 200;

/** Finds somebody by their whole name, contact or reference. What is found is forgotten when the form is left. */
export function ClientFinder({
  studioId,
  clientId,
  onChoose,
}: {
  studioId: string;
  /** Empty: nobody yet. */
  clientId: string;
  onChoose: (clientId: string) => void;
}) {
  const texts = useTexts();
  const [text, setText] = useState('');
  const [found, setFound] = useState<ClientView[]>();
  const { run, busy, problem } = useAction(async () => {
    onChoose('');
    setFound(undefined);
    const clients = await findClients(studioId, text);
    const usable = clients.filter(({ erasedAt }) => erasedAt === null);
    setFound(usable);
    const [only, ...others] = usable;
    if (only && others.length === 0) onChoose(only.id);
  });
  return (
    <Stack gap="lg">
      <Fields onSubmit={() => void run()} label={texts.walkIn.find}>
        <TextInput
          label={texts.walkIn.search}
          description={texts.walkIn.searchHint}
          required
          maxLength={longestText}
          autoComplete="off"
          spellCheck={false}
          value={text}
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <ProblemNote problem={problem} />
        <Group gap="sm">
          <Button type="submit" variant="default" loading={busy}>
            {texts.walkIn.find}
          </Button>
        </Group>
      </Fields>
      {found?.length === 0 && <p role="status">{texts.walkIn.noneFound}</p>}
      {found && found.length > 0 && (
        <Radio.Group label={texts.walkIn.found} value={clientId} onChange={onChoose}>
          <Stack gap="sm" mt="xs">
            {found.map(({ id, name, reference, contact }) => (
              <Radio
                key={id}
                value={id}
                label={[name, reference, contact].filter((word) => word !== null).join(', ')}
              />
            ))}
          </Stack>
        </Radio.Group>
      )}
    </Stack>
  );
}
