import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { InProcessQueue } from '../../src/alerts/queue/in-process-queue.service.js';
import { ScheduleStates } from '../../src/alerts/schedule/schedule-states.service.js';
import { Schedules } from '../../src/alerts/schedule/schedules.service.js';
import { StudioActors } from '../../src/identity/studio-actors.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { readConfig } from '../../src/platform/config.js';
import { ProcessRole } from '../../src/platform/process-role.js';
import { linesKeptDays, OldPlanLines } from '../../src/reorder/plan/old-plan-lines.service.js';
import { Plan, PlanLine } from '../../src/reorder/plan/plan.entity.js';
import { PurchaseOrder } from '../../src/reorder/purchase-orders/purchase-order.entity.js';
import { runCommand, settingsOf } from '../support/commands.js';
import { MovedClock } from '../support/moved-clock.js';
import { type ProblemBody, type RunningService, startService, strictestEngine } from '../support/service.js';
import { Store } from '../support/store.js';

/** More than are removed in one transaction. */
const lineCount = 120;

describe.each(strictestEngine)('lines of old plans, on %s', (engine) => {
  let service: RunningService;
  let store: Store;
  let actor: Actor;
  let clock: MovedClock;
  let role: ProcessRole;
  let lines: OldPlanLines;

  beforeAll(async () => {
    service = await startService(engine);
    store = await Store.open(service.dataFolder, service.databaseUrl);
    actor = { ...(await store.ownerOf(service.studioId)), via: 'system', personId: null };
    clock = new MovedClock();
    // The service looked today.
    clock.forward(26);
    role = new ProcessRole(true);
    const schedules = new Schedules(new InProcessQueue(1), readConfig({}), role);
    const { database, transactions } = store;
    const studioActors = new StudioActors(database);
    lines = new OldPlanLines(
      database,
      transactions,
      clock,
      role,
      new ScheduleStates(),
      studioActors,
      schedules,
    );
  });
  afterAll(async () => {
    await store.close();
    await service.dispose();
  });

  const write = (work: Parameters<Store['transactions']['write']>[2]) =>
    store.transactions.write(
      actor,
      { id: null, action: 'test', subject: { kind: 'studio', id: actor.studioId }, content: null },
      work,
    );
  const dayBefore = (days: number) =>
    new Date(Date.parse(clock.now()) - days * 86_400_000).toLocaleDateString('sv-SE', {
      timeZone: actor.timeZone,
    });

  /** A plan with lines, or one that shows those of another. */
  async function plan(daysAgo: number, more: Partial<Plan> = {}): Promise<string> {
    const [id, plannedOn, { studioId }] = [uuidv7(), dayBefore(daysAgo), actor];
    const count = more.sameAsId === undefined ? lineCount : 0;
    await write(async (transaction) => {
      await transaction.insert(Plan, {
        ...{
          studioId,
          id,
          purpose: 'plan' as const,
          whatIf: null,
          state: 'done' as const,
          plannedOn,
          seed: 1,
        },
        ...{ factsDigest: 'x', sameAsId: null, summary: { sums: { lines: count } }, failure: null },
        ...{ askedAt: `${plannedOn}T05:00:00.000Z`, personId: null, endedAt: null, version: 1 },
        ...more,
      });
      const one = {
        ...{ studioId, planId: id, itemKind: 'product' as const, decision: 'enough' as const, orderOn: null },
        ...{ offerId: null, packs: 0, supplierId: null, factsDigest: 'x', content: {} },
      };
      await transaction.insert(
        PlanLine,
        Array.from({ length: count }, (_, index) => {
          return { ...one, id: uuidv7(), lineNumber: index + 1, itemKey: `item ${index}` };
        }),
      );
    });
    return id;
  }
  async function draft(planId: string, number: number): Promise<void> {
    const { id: supplierId } = await service.made<{ id: string }>('/suppliers', { name: `Quill ${number}` });
    const { studioId, chainId } = actor;
    await write((transaction) =>
      transaction.insert(PurchaseOrder, {
        ...{ studioId, chainId, id: uuidv7(), number, supplierId, planId, state: 'called off' as const },
        ...{ currency: 'EUR', deliveryCostMinor: null, approvedBy: null, approvedAt: null, sentAs: null },
        ...{ sentAt: null, expectedDeliveryId: null, endedAt: transaction.recordedAt },
        ...{ endedAs: 'called off' as const, version: 1, createdAt: transaction.recordedAt },
      }),
    );
  }
  const linesOf = (planId: string) =>
    store.database.reader.manager.countBy(PlanLine, { studioId: actor.studioId, planId });

  const summaryOf = async (id: string) =>
    (await store.database.reader.manager.findOneByOrFail(Plan, { id })).summary;

  it('go when nothing was ordered from the plan, and it says so; what was drafted from and the latest stay', async () => {
    const [old, unfinished, kept, drafted, shown] = [
      await plan(linesKeptDays + 1),
      await plan(linesKeptDays + 9, { state: 'failed', summary: null }),
      await plan(linesKeptDays),
      await plan(linesKeptDays + 5),
      await plan(linesKeptDays + 6),
    ];
    await draft(drafted, 1);
    await draft(await plan(linesKeptDays + 6, { sameAsId: shown, summary: null }), 2);

    role.ending = true;
    await lines.look();
    expect(await linesOf(old)).toBe(lineCount);
    role.ending = false;
    await Promise.all([lines.look(), lines.look()]);
    const left = await Promise.all([old, unfinished, kept, drafted, shown].map(linesOf));
    expect(left).toEqual([0, 0, lineCount, lineCount, lineCount]);

    const gone = await service.get<ProblemBody>(`/plans/${old}/lines`);
    expect(gone).toMatchObject({ status: 409, body: { code: 'wrong-state' } });
    expect(gone.body.detail).toMatch(/its lines were removed\. Have another made\.$/);
    expect(await service.seen(`/plans/${old}`)).toMatchObject({ state: 'done', sums: { lines: lineCount } });
    const removals = await store.database.read<{ payload: string }>(
      `SELECT payload FROM audit_entry WHERE studio_id = $1 AND action = 'reorder.remove-plan-lines'
         AND subject_id = $2 ORDER BY sequence`,
      [actor.studioId, old],
    );
    const written = removals.map(({ payload }) => (JSON.parse(payload) as { rows: unknown[] }).rows.length);
    expect(written.reduce((sum, count) => sum + count, 0)).toBe(lineCount);
    expect(Math.max(...written)).toBeLessThanOrEqual(50);
  });

  it('stay of the latest plan and the latest replay however old, and the record is whole afterwards', async () => {
    const [before, latest] = [await plan(linesKeptDays - 1), await plan(linesKeptDays - 2)];
    const replay = { purpose: 'replay' as const, sameAsId: null, summary: { lines: ['of a replay'] } };
    const [earlier, last] = [await plan(linesKeptDays - 1, replay), await plan(linesKeptDays - 2, replay)];
    await lines.look();
    expect(await linesOf(before)).toBe(lineCount);
    expect(await summaryOf(earlier)).not.toBeNull();
    clock.forward(24 * 60);
    await Promise.all([lines.look(), lines.look()]);
    expect([await summaryOf(earlier), await summaryOf(last)]).toEqual([null, replay.summary]);
    expect([await linesOf(before), await linesOf(latest)]).toEqual([0, lineCount]);
    const { code, err } = await runCommand(['verify'], { environment: settingsOf(service) });
    expect([code, err]).toEqual([0, '']);
  });
});
