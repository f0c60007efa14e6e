import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { ReleaseRequestView } from '../../../stock/holds.views.js';
import { ShownPhoto } from '../../frame/shown-photo.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { usePeople } from '../../service/studio-answers.js';
import { useTexts } from '../../texts/texts.js';

/** Who asked that a hold be released, when and why, with the photo if there is one. */
export function ReleaseRequest({
  standing: { studioId, personId, permissions },
  request,
  isOpen,
}: {
  standing: StandingView;
  request: ReleaseRequestView;
  isOpen: boolean;
}) {
  const texts = useTexts();
  const when = useStudioInstants(studioId);
  const people = usePeople(studioId).answer;
  const name = people?.find(({ id }) => id === request.personId)?.name ?? texts.records.unknownPerson;
  return (
    <>
      <p>{texts.holds.releaseAsked(name, when(request.occurredAt), request.reason)}</p>
      {isOpen && request.personId === personId && <p>{texts.holds.anotherReleases}</p>}
      {request.photoId !== null && permissions.includes('read recalls') && (
        <ShownPhoto studioId={studioId} photoId={request.photoId} />
      )}
    </>
  );
}
