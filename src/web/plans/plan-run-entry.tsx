import type { ReactNode } from 'react';
import type { PlanView } from '../../reorder/plan/plans.views.js';
import { Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { ServiceWords } from '../frame/service-words.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { usePeople } from '../service/studio-answers.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';

/** One run of a plan in a list: when it was asked for, by whom, and what became of it. */
export function PlanRunEntry({
  studioId,
  plan,
  path,
  children,
}: {
  studioId: string;
  plan: PlanView;
  path: string;
  /** What sets it apart from others. */
  children?: ReactNode;
}) {
  const texts = useTexts();
  const words = texts.plans;
  const at = useStudioInstants(studioId);
  const people = usePeople(studioId).answer;
  const { plannedOn, state, askedAt, personId, dueToday, runningSeconds, failure, sameAsId } = plan;
  const name =
    personId === null ? words.byItself : (people?.find(({ id }) => id === personId)?.name ?? words.somebody);
  return (
    <Entry
      name={
        <PageLink to={path} alone>
          {(plan.purpose === 'what if' ? texts.whatIf.titleOf : words.titleOf)(
            writtenDay(plannedOn, texts.language),
          )}
        </PageLink>
      }
      mark={words.states[state]}
    >
      {children}
      <p>{words.askedFor(name, at(askedAt))}</p>
      <p>
        {[
          ...(dueToday === null ? [] : [words.dueToday(dueToday)]),
          ...(sameAsId !== null ? [words.sameInBrief] : []),
          ...(state === 'done' && sameAsId === null && runningSeconds !== null
            ? [words.took(Math.round(runningSeconds))]
            : []),
        ].join(', ')}
      </p>
      {failure !== null && (
        <p>
          <ServiceWords>{failure}</ServiceWords>
        </p>
      )}
    </Entry>
  );
}
