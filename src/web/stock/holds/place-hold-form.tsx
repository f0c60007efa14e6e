import { Button, Textarea } from '@mantine/core';
import { useRef, useState } from 'react';
import { type HoldKind, type HoldReason, holdKinds, holdReasons } from '../../../stock/vocabulary.js';
import { Choice } from '../../frame/choice.js';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { Events } from '../../service/events.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { type Holdable, placeHold } from './holds.requests.js';

const longestNote = 500;

/** Puts a lot or a container on hold; a button until it is pressed. */
export function PlaceHold({
  studioId,
  on,
  onPlaced,
}: {
  studioId: string;
  on: Holdable;
  onPlaced: () => Promise<void>;
}) {
  const texts = useTexts();
  const [placing, setPlacing] = useState(false);
  if (!placing) {
    return (
      <Button mt="md" variant="default" onClick={() => setPlacing(true)}>
        {'lotId' in on ? texts.holds.placeOnLot : texts.holds.placeOnContainer}
      </Button>
    );
  }
  return (
    <PlaceHoldForm
      studioId={studioId}
      on={on}
      onPlaced={async () => {
        await onPlaced();
        setPlacing(false);
      }}
      onCancel={() => setPlacing(false)}
    />
  );
}

function PlaceHoldForm({
  studioId,
  on,
  onPlaced,
  onCancel,
}: {
  studioId: string;
  on: Holdable;
  onPlaced: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const [kind, setKind] = useState<HoldKind>('quarantine');
  const [reason, setReason] = useState<HoldReason>('doubt');
  const [note, setNote] = useState('');
  const events = useRef(new Events()).current;
  const { run, busy, problem } = useAction(async () => {
    const hold = { kind, reason, note: note.trim() };
    await placeHold(studioId, on, hold, events.of({ ...on, ...hold }));
    events.renew();
    await onPlaced();
  });
  return (
    <Fields
      onSubmit={() => void run()}
      label={'lotId' in on ? texts.holds.placeOnLot : texts.holds.placeOnContainer}
    >
      <Choice
        label={texts.holds.kind}
        description={texts.holds.kindHints[kind]}
        value={kind}
        choices={holdKinds.map((one) => ({ value: one, label: texts.holdKinds[one] }))}
        onChange={(value) => value !== '' && setKind(value)}
      />
      <Choice
        label={texts.holds.reason}
        value={reason}
        choices={holdReasons.map((one) => ({ value: one, label: texts.holdReasons[one] }))}
        onChange={(value) => value !== '' && setReason(value)}
      />
      <Textarea
        label={texts.holds.note}
        description={texts.holds.noteHint}
        maxLength={longestNote}
        autosize
        minRows={2}
        value={note}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}
