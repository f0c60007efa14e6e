import type { PlanView } from '../../reorder/plan/plans.views.js';
import { Note } from '../frame/note.js';
import { ServiceWords } from '../frame/service-words.js';
import { useTexts } from '../texts/texts.js';

/** What became of a run of a plan, where that is not plain from what is shown. */
export function RunNote({
  run: { state, failure, sameAsId },
  isOlderShown = false,
}: {
  run: Pick<PlanView, 'state' | 'failure' | 'sameAsId'>;
  /** Whether what was worked out before it is shown instead. */
  isOlderShown?: boolean;
}) {
  const texts = useTexts();
  const words = texts.plans;
  if (state === 'failed') {
    return (
      <Note kind="fault">
        <p>
          {words.failed} {failure !== null && <ServiceWords>{failure}</ServiceWords>}
        </p>
        <p>{isOlderShown ? words.olderShown : words.tryAgain}</p>
      </Note>
    );
  }
  if (state === 'cancelled') {
    return (
      <Note kind="plain">
        <p>
          {words.stopped} {isOlderShown && words.olderShown}
        </p>
      </Note>
    );
  }
  if (state === 'done' && sameAsId !== null) {
    return (
      <Note kind="plain">
        <p>{words.same}</p>
      </Note>
    );
  }
  return null;
}
