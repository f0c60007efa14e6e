import type { PlanView } from '../../../src/reorder/plan/plans.views.js';
import type { ReplaysView, ReplayView } from '../../../src/reorder/replay/replays.views.js';
import type { StockLevelsView } from '../../../src/stock/levels.views.js';
import { until } from '../waiting.js';
import type { RecordingService } from './recording-service.js';

/** A plan, what would be if something were different, and reorder points taken into stock's levels. */
export async function livePlans(service: RecordingService): Promise<{ planId: string }> {
  const { products } = await service.seen<StockLevelsView>('/stock/levels');
  const plan = await service.made<PlanView>('/plans', { purpose: 'plan' });
  const [procedure] = await service.seen<{ id: string }[]>('/procedures');
  // It waits for the one before it, so there is something to end.
  const whatIf = await service.made<PlanView>('/plans', {
    purpose: 'what if',
    whatIf: {
      serviceTargetPerMille: 990,
      leadTimePerMille: 1_500,
      leadTimeExtraDays: 2,
      pricePerMille: 1_100,
      bookingsPerMille: 1_200,
      extraSessions: [
        {
          procedureId: procedure?.id,
          on: new Date(Date.now() + 5 * 86_400_000).toISOString().slice(0, 10),
          sessions: 2,
        },
      ],
    },
  });
  await service.made(`/plans/${whatIf.id}/cancel`);
  await until('a plan', async () => {
    const { state, failure } = await service.seen<PlanView>(`/plans/${plan.id}`);
    if (state === 'failed') throw new Error(failure ?? '');
    return state === 'done' ? state : undefined;
  });
  await service.made('/plans', {
    purpose: 'what if',
    whatIf: { itemKind: 'product', itemKey: products[0]?.productId, pricePerMille: 900 },
  });
  await service.made(`/plans/${plan.id}/levels`);
  const replay = await service.made<ReplayView>('/plans/replay');
  await until('a replay', async () => {
    const { run } = await service.seen<ReplaysView>('/plans/replay');
    if (run?.state === 'failed') throw new Error(run.failure ?? '');
    return run?.id === replay.id && run.state === 'done' ? run : undefined;
  });
  return { planId: plan.id };
}
