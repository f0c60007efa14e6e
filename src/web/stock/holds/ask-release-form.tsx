import { Textarea } from '@mantine/core';
import { useRef, useState } from 'react';
import { roleMay } from '../../../identity/permissions.js';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Fields } from '../../frame/fields.js';
import { PhotoField } from '../../frame/photo-field.js';
import type { PickedPhoto } from '../../frame/picked-photo.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { Events } from '../../service/events.js';
import { keepPhoto } from '../../service/photos.js';
import { usePeople } from '../../service/studio-answers.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { askRelease } from './holds.requests.js';

const longestReason = 300;

/** Asks that a recall hold be released; where nobody else may release it, with a photo. */
export function AskReleaseForm({
  standing: { studioId, personId, permissions },
  holdId,
  about,
  onAsked,
  onCancel,
}: {
  standing: StandingView;
  holdId: string;
  /** What is held, in words. */
  about: string;
  onAsked: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const [reason, setReason] = useState('');
  const [photo, setPhoto] = useState<PickedPhoto>();
  const events = useRef(new Events()).current;
  const people = usePeople(studioId).answer;
  const isAlone =
    people !== undefined &&
    !people.some(
      ({ id, role, state, hasAccount }) =>
        id !== personId && state === 'active' && hasAccount && roleMay(role, 'release holds'),
    );
  const { run, busy, problem } = useAction(async () => {
    const asked = {
      reason: reason.trim(),
      ...(photo && { photoId: await keepPhoto(studioId, photo) }),
    };
    await askRelease(studioId, holdId, asked, events.of({ holdId, ...asked }));
    await onAsked();
  });
  return (
    <Fields onSubmit={() => void run()} label={texts.holds.askReleaseOf(about)}>
      <Textarea
        label={texts.holds.releaseReason}
        description={texts.holds.releaseHint}
        required
        autosize
        minRows={2}
        maxLength={longestReason}
        autoComplete="off"
        value={reason}
        error={problem?.faultOf('reason')}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      {permissions.includes('find held stock') && (
        <PhotoField
          label={texts.holds.releasePhoto}
          hint={isAlone ? texts.holds.releasePhotoAlone : texts.holds.releasePhotoHint}
          value={photo}
          onChange={setPhoto}
        />
      )}
      <SaveOrCancel problem={problem} busy={busy} save={texts.holds.askRelease} onCancel={onCancel} />
    </Fields>
  );
}
