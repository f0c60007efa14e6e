import { Textarea, TextInput } from '@mantine/core';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import type { Who } from './clients.requests.js';

export interface WhoDraft {
  name: string;
  contact: string;
  note: string;
}

/** Empty is not known. */
export function whoOf({ name, contact, note }: WhoDraft): Who {
  const orNull = (text: string) => (text.trim() === '' ? null : text.trim());
  return { name: name.trim(), contact: orNull(contact), note: orNull(note) };
}

/** Who a client is. Browsers are asked to keep none of it. */
export function WhoFields({
  draft,
  problem,
  onChange,
}: {
  draft: WhoDraft;
  problem: ServiceProblem | undefined;
  onChange: (draft: WhoDraft) => void;
}) {
  const texts = useTexts();
  return (
    <>
      <TextInput
        label={texts.clients.name}
        required
        maxLength={200}
        autoComplete="off"
        value={draft.name}
        error={problem?.faultOf('name')}
        onChange={(event) => onChange({ ...draft, name: event.currentTarget.value })}
      />
      <TextInput
        label={texts.clients.contact}
        description={texts.clients.contactHint}
        maxLength={200}
        autoComplete="off"
        value={draft.contact}
        error={problem?.faultOf('contact')}
        onChange={(event) => onChange({ ...draft, contact: event.currentTarget.value })}
      />
      <Textarea
        label={texts.clients.note}
        description={texts.clients.noteHint}
        autosize
        minRows={2}
        maxLength={2000}
        autoComplete="off"
        value={draft.note}
        error={problem?.faultOf('note')}
        onChange={(event) => onChange({ ...draft, note: event.currentTarget.value })}
      />
    </>
  );
}
