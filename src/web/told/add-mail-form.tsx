import { Button, Group, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { addMail } from './told.requests.js';

/** Adds an address to which alerts are mailed. */
export function AddMailForm({
  studioId,
  personId,
  label,
  onAdded,
  onCancel,
}: {
  studioId: string;
  /** Whose address it is. */
  personId: string;
  /** Names the form, where there are several. */
  label: string;
  onAdded: () => Promise<void>;
  /** Left out: the form stays. */
  onCancel?: () => void;
}) {
  const texts = useTexts();
  const words = texts.told;
  const [address, setAddress] = useState('');
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const mail = { personId, address: address.trim() };
    await addMail(studioId, { id: ids.for(mail), ...mail });
    ids.renew();
    setAddress('');
    await onAdded();
  });
  const fault = problem?.faultOf('address') ?? problem?.detailOf('already-exists');
  return (
    <Fields onSubmit={() => void run()} label={label}>
      <TextInput
        // Left to the service to judge, which says what is wrong in words.
        inputMode="email"
        label={words.address}
        description={words.addressHint}
        required
        maxLength={254}
        autoComplete="email"
        value={address}
        error={fault}
        onChange={(event) => setAddress(event.currentTarget.value)}
      />
      {fault === undefined && <ProblemNote problem={problem} />}
      <Group gap="sm">
        <Button type="submit" loading={busy}>
          {words.addMail}
        </Button>
        {onCancel && (
          <Button variant="default" onClick={onCancel}>
            {texts.app.cancel}
          </Button>
        )}
      </Group>
    </Fields>
  );
}
