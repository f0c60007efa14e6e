import type { PlanDetailView, PlanLineSummaryView } from '../../reorder/plan/plans.views.js';
import type { LineDecision } from '../../reorder/plan/vocabulary.js';
import type { BodyOf } from '../service/operations.js';
import { isProblem } from '../service/problem.js';
import { request } from '../service/request.js';
import { useAnswer } from '../service/use-answer.js';
import { usePages } from '../service/use-pages.js';

export type MadePlan = BodyOf<'POST', '/studios/{studioId}/plans'>;

export const makePlan = (studioId: string, made: MadePlan) =>
  request('POST', '/studios/{studioId}/plans', { studioId }, made);

export const cancelPlan = (studioId: string, planId: string, write: { id: string }) =>
  request('POST', '/studios/{studioId}/plans/{planId}/cancel', { studioId, planId }, write);

/** The latest plan that is done; null: there is none yet. */
export const useLatestPlan = (studioId: string) =>
  useAnswer<PlanDetailView | null>(['latest plan', studioId], async () => {
    try {
      return await request('GET', '/studios/{studioId}/plans/latest', { studioId });
    } catch (error) {
      if (isProblem(error, 'not-found')) return null;
      throw error;
    }
  });

export const usePlan = (studioId: string, planId: string) =>
  useAnswer(
    ['plan', studioId, planId],
    () => request('GET', '/studios/{studioId}/plans/{planId}', { studioId, planId }),
    isUnderWay,
  );

/** The latest plan that was asked for, whatever became of it. */
export const useLatestRun = (studioId: string) =>
  useAnswer(
    ['latest run of a plan', studioId],
    async () => {
      const { items } = await request('GET', '/studios/{studioId}/plans', {
        studioId,
        purpose: 'plan',
        limit: 1,
      });
      return items[0] ?? null;
    },
    (run) => run !== null && isUnderWay(run),
  );

export const usePlans = (studioId: string, purpose: 'plan' | 'what if') =>
  usePages(
    ['plans', studioId, purpose],
    (after) =>
      request('GET', '/studios/{studioId}/plans', {
        studioId,
        purpose,
        ...(after !== undefined && { after }),
      }),
    isUnderWay,
  );

export function isUnderWay({ state }: Pick<PlanDetailView, 'state'>): boolean {
  return state === 'waiting' || state === 'running';
}

/** Lines of one decision, page by page. */
export const usePlanLines = (studioId: string, planId: string, decision: LineDecision) =>
  usePages(['plan lines', studioId, planId, decision], async (after) => {
    const { items, next } = await request('GET', '/studios/{studioId}/plans/{planId}/lines', {
      ...{ studioId, planId, decision },
      ...(after !== undefined && { afterLine: Number(after) }),
    });
    return { items, next: next === null ? null : String(next) };
  });

const pageSize = 200;
/** More than a studio has items. */
const mostPages = 20;

/** All lines of a plan, or of one decision. */
export async function allPlanLines(
  studioId: string,
  planId: string,
  decision?: LineDecision,
): Promise<PlanLineSummaryView[]> {
  const lines: PlanLineSummaryView[] = [];
  let afterLine: number | null = null;
  for (let page = 0; page < mostPages; page += 1) {
    const { items, next }: { items: PlanLineSummaryView[]; next: number | null } = await request(
      'GET',
      '/studios/{studioId}/plans/{planId}/lines',
      {
        ...{ studioId, planId, limit: pageSize },
        ...(decision !== undefined && { decision }),
        ...(afterLine !== null && { afterLine }),
      },
    );
    lines.push(...items);
    if (next === null) break;
    afterLine = next;
  }
  return lines;
}

export const usePlanLine = (studioId: string, planId: string, lineNumber: number) =>
  useAnswer(['plan line', studioId, planId, String(lineNumber)], () =>
    request('GET', '/studios/{studioId}/plans/{planId}/lines/{lineNumber}', {
      ...{ studioId, planId, lineNumber },
    }),
  );

/** The latest orders, whatever became of them: as many as one page holds. */
export async function latestOrders(studioId: string) {
  const { items } = await request('GET', '/studios/{studioId}/purchase-orders', {
    ...({ studioId, state: 'all', limit: pageSize } as const),
  });
  return items;
}

/** The latest runs of plans, whatever became of them: as many as one page holds. */
export async function latestPlans(studioId: string) {
  const { items } = await request('GET', '/studios/{studioId}/plans', {
    ...({ studioId, purpose: 'plan', limit: pageSize } as const),
  });
  return items;
}
