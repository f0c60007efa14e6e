import { NumberInput, Textarea, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import type { RecallContainerView } from '../../../../recalls/containers/recall-containers.views.js';
import { type DispositionKind, dispositionKinds } from '../../../../recalls/vocabulary.js';
import { Choice } from '../../../frame/choice.js';
import { Fields } from '../../../frame/fields.js';
import { PhotoField } from '../../../frame/photo-field.js';
import type { PickedPhoto } from '../../../frame/picked-photo.js';
import { SaveOrCancel } from '../../../frame/save-or-cancel.js';
import { Events } from '../../../service/events.js';
import { keepPhoto } from '../../../service/photos.js';
import { usePeople } from '../../../service/studio-answers.js';
import { useAction } from '../../../service/use-action.js';
import { useTexts } from '../../../texts/texts.js';
import { recordDisposition } from './containers.requests.js';

const longestReference = 100;
const longestReason = 300;

/** What is left was sent back or destroyed, seen by a witness or in a photo. */
export function DispositionForm({
  standing: { studioId, personId },
  recallId,
  container,
  about,
  onRecorded,
  onCancel,
}: {
  standing: StandingView;
  recallId: string;
  container: Pick<RecallContainerView, 'containerId' | 'form' | 'pieces'>;
  /** What it is, in words. */
  about: string;
  /** With what the person should know. */
  onRecorded: (warnings: string[]) => Promise<void>;
  onCancel: () => void;
}) {
  const words = useTexts().recallContainers;
  const others = usePeople(studioId).answer?.filter(({ id, state }) => id !== personId && state === 'active');
  const [kind, setKind] = useState<DispositionKind>('returned');
  const [pieces, setPieces] = useState<number>();
  const [witnessId, setWitnessId] = useState('');
  const [photo, setPhoto] = useState<PickedPhoto>();
  const [reference, setReference] = useState('');
  const [reason, setReason] = useState('');
  const events = useRef(new Events()).current;
  const { run, busy, problem } = useAction(async () => {
    const disposition = {
      kind,
      reference: reference.trim(),
      ...(container.form === 'box' && pieces !== undefined && { pieces }),
      ...(witnessId !== '' && { witnessId }),
      ...(photo && { photoId: await keepPhoto(studioId, photo) }),
      ...(reason.trim() !== '' && { reason: reason.trim() }),
    };
    const event = events.of(disposition);
    const { warnings } = await recordDisposition(
      studioId,
      recallId,
      container.containerId,
      disposition,
      event,
    );
    await onRecorded(warnings);
  });
  return (
    <Fields onSubmit={() => void run()} label={words.disposeOf(about)}>
      <Choice
        label={words.kind}
        value={kind}
        choices={dispositionKinds.map((value) => ({ value, label: words.kinds[value] }))}
        required
        onChange={(value) => setKind(value === '' ? 'returned' : value)}
      />
      {container.form === 'box' && (
        <NumberInput
          label={words.pieces}
          description={words.piecesHint}
          min={1}
          max={Math.max(1, container.pieces)}
          allowDecimal={false}
          hideControls
          value={pieces ?? ''}
          error={problem?.faultOf('pieces')}
          onChange={(value) => setPieces(typeof value === 'number' ? value : undefined)}
        />
      )}
      <TextInput
        label={words.reference}
        required
        autoComplete="off"
        maxLength={longestReference}
        value={reference}
        error={problem?.faultOf('reference')}
        onChange={(event) => setReference(event.currentTarget.value)}
      />
      <Choice
        label={words.witness}
        description={words.witnessHint}
        value={witnessId}
        none={words.noWitness}
        choices={(others ?? []).map(({ id, name }) => ({ value: id, label: name ?? id }))}
        error={problem?.faultOf('witnessId')}
        onChange={setWitnessId}
      />
      <PhotoField label={words.proof} hint={words.proofHint} value={photo} onChange={setPhoto} />
      <Textarea
        label={words.reason}
        description={words.noteHint}
        autosize
        minRows={1}
        autoComplete="off"
        maxLength={longestReason}
        value={reason}
        error={problem?.faultOf('reason')}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} save={words.save} onCancel={onCancel} />
    </Fields>
  );
}
