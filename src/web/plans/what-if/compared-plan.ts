import type { PlanView } from '../../../reorder/plan/plans.views.js';

type Run = Pick<PlanView, 'id' | 'state' | 'plannedOn' | 'askedAt' | 'endedAt'>;

/**
 * The plan that was the latest when a question was asked: what was seen beside it.
 * @param plans the latest first
 */
export function comparedPlan<Known extends Run>(
  plans: readonly Known[],
  { askedAt }: Pick<Run, 'askedAt'>,
): Known | undefined {
  return plans.find(({ state, endedAt }) => state === 'done' && endedAt !== null && endedAt <= askedAt);
}

/** Whether the facts are plainly others than those of the plan: another day, or something was ordered in between. */
export function isOutdated(
  base: Pick<Run, 'plannedOn' | 'askedAt'>,
  asked: Pick<Run, 'plannedOn' | 'askedAt'>,
  orders: readonly { createdAt: string }[],
): boolean {
  return (
    base.plannedOn < asked.plannedOn ||
    orders.some(({ createdAt }) => createdAt > base.askedAt && createdAt <= asked.askedAt)
  );
}
