import { Textarea, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { RecallContainerView } from '../../../../recalls/containers/recall-containers.views.js';
import type { FindingResult } from '../../../../recalls/vocabulary.js';
import { Choice } from '../../../frame/choice.js';
import { Fields } from '../../../frame/fields.js';
import { PhotoField } from '../../../frame/photo-field.js';
import type { PickedPhoto } from '../../../frame/picked-photo.js';
import { SaveOrCancel } from '../../../frame/save-or-cancel.js';
import { Events } from '../../../service/events.js';
import { keepPhoto } from '../../../service/photos.js';
import { usePlaces } from '../../../service/studio-answers.js';
import { useAction } from '../../../service/use-action.js';
import { useTexts } from '../../../texts/texts.js';
import { recordFinding } from './containers.requests.js';

const longestTag = 100;
const longestNote = 300;

/** A container was found, tagged and put aside; or nobody could find it. */
export function FindingForm({
  studioId,
  recallId,
  container,
  about,
  result,
  isDrill,
  onRecorded,
  onCancel,
}: {
  studioId: string;
  recallId: string;
  container: Pick<RecallContainerView, 'containerId'>;
  /** What it is, in words. */
  about: string;
  result: FindingResult;
  isDrill: boolean;
  /** With what the person should know. */
  onRecorded: (warnings: string[]) => Promise<void>;
  onCancel: () => void;
}) {
  const words = useTexts().recallContainers;
  const places = usePlaces(studioId).answer?.filter(({ archived }) => !archived) ?? [];
  const setAside = places.filter(({ kind }) => kind === 'set aside');
  const [chosen, setChosen] = useState<string>();
  const [tag, setTag] = useState('');
  const [note, setNote] = useState('');
  const [photo, setPhoto] = useState<PickedPhoto>();
  const events = useRef(new Events()).current;
  const isFound = result === 'found';
  const placeId = chosen ?? setAside[0]?.id ?? '';
  const { run, busy, problem } = useAction(async () => {
    const finding = {
      result,
      ...(isFound && placeId !== '' && { placeId }),
      ...(isFound && tag.trim() !== '' && { tag: tag.trim() }),
      ...(note.trim() !== '' && { note: note.trim() }),
      ...(photo && { photoId: await keepPhoto(studioId, photo) }),
    };
    const { warnings } = await recordFinding(
      studioId,
      recallId,
      container.containerId,
      finding,
      events.of(finding),
    );
    await onRecorded(warnings);
  });
  return (
    <Fields onSubmit={() => void run()} label={isFound ? words.findOf(about) : words.missOf(about)}>
      {isFound && (
        <>
          <Choice
            label={words.place}
            description={isDrill ? words.placeHintDrill : words.placeHint}
            value={placeId}
            none={words.noPlace}
            choices={[...setAside, ...places.filter(({ kind }) => kind !== 'set aside')].map(
              ({ id, name }) => ({ value: id, label: name }),
            )}
            error={problem?.faultOf('placeId')}
            onChange={setChosen}
          />
          <TextInput
            label={words.tagLabel}
            autoComplete="off"
            maxLength={longestTag}
            value={tag}
            error={problem?.faultOf('tag')}
            onChange={(event) => setTag(event.currentTarget.value)}
          />
          <PhotoField label={words.photo} hint={words.photoHint} value={photo} onChange={setPhoto} />
        </>
      )}
      <Textarea
        label={words.note}
        description={words.noteHint}
        autosize
        minRows={1}
        autoComplete="off"
        maxLength={longestNote}
        value={note}
        error={problem?.faultOf('note')}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} save={words.save} onCancel={onCancel} />
    </Fields>
  );
}
