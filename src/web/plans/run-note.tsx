import type { PlanView } from '../../reorder/plan/plans.views.js';
import { Note } from '../frame/note.js';
import { useTexts } from '../texts/texts.js';

/** What became of a run of a plan, where that is not plain from what is shown. */
export function RunNote({
  run: { state, failure, sameAsId },
}: {
  run: Pick<PlanView, 'state' | 'failure' | 'sameAsId'>;
}) {
  const texts = useTexts();
  const words = texts.plans;
  if (state === 'failed') {
    return (
      <Note kind="fault">
        <p>{failure === null ? words.failedUnknown : words.failed(failure)}</p>
      </Note>
    );
  }
  if (state === 'cancelled') {
    return (
      <Note kind="plain">
        <p>{words.stopped}</p>
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
