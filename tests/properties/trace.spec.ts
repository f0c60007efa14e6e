import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ClientAccessLog } from '../../src/clients/client-access-log.service.js';
import type { Actor } from '../../src/platform/actor.js';
import { Clock } from '../../src/platform/clock.js';
import { BlendAncestry } from '../../src/sessions/blend-ancestry.service.js';
import { SisterLots } from '../../src/sessions/sister-lots.service.js';
import { Trace } from '../../src/sessions/trace.service.js';
import type { TraceUseView, TraceView } from '../../src/sessions/trace.views.js';
import { UsePages } from '../../src/sessions/use-page.service.js';
import { anyExposureGraph, type ExposureGraph, insertGraph } from '../support/exposure-graph.js';
import { Store } from '../support/store.js';

const runs = Number(process.env.LOTWARD_PROPERTY_RUNS ?? 40);

/** How much of a lot another lot is, by walking every way there is: slow, and made of nothing of the service's. */
function shareInModel(graph: ExposureGraph, lot: number, root: number): number | undefined {
  if (lot === root) return 1;
  const parents = graph.lots[lot] ?? [];
  const produced = parents.reduce((sum, parent) => sum + parent.microlitres, 0);
  let share: number | undefined;
  for (const { parent, microlitres } of parents) {
    const before = shareInModel(graph, parent, root);
    if (before !== undefined) share = (share ?? 0) + (before * microlitres) / produced;
  }
  return share;
}

interface ExpectedUse {
  use: number;
  lot: number;
  share: number;
}

/** Every pair of a use and a lot that was in it. */
function exposuresInModel(graph: ExposureGraph): ExpectedUse[] {
  return graph.uses.flatMap((use, index) =>
    graph.lots.flatMap((_, lot) => {
      const share = shareInModel(graph, use.lot, lot);
      return share === undefined ? [] : [{ use: index, lot, share }];
    }),
  );
}

describe('the trace of random lots, blends, mixes and sessions', () => {
  let store: Store;
  let folder: string;
  let trace: Trace;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'lotward-trace-'));
    store = await Store.open(folder);
    trace = new Trace(
      store.database,
      new UsePages(store.database),
      new BlendAncestry(store.database),
      new SisterLots(store.database),
      new ClientAccessLog(store.transactions, new Clock()),
    );
  });
  afterAll(async () => {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function allPages(
    read: (page: { limit: number; after?: string }) => Promise<TraceView>,
    limit: number,
  ) {
    const items: TraceUseView[] = [];
    let after: string | undefined;
    let totals: TraceView['totals'];
    do {
      const page = await read({ limit, after });
      items.push(...page.items);
      totals = page.totals;
      after = page.next ?? undefined;
    } while (after !== undefined);
    return { items, totals };
  }

  function sameAsModel(
    graph: ExposureGraph,
    ids: { lots: string[]; uses: string[]; sessions: string[]; clients: string[] },
    found: { items: TraceUseView[]; totals: TraceView['totals'] },
    expected: ExpectedUse[],
  ): void {
    const pairs = (list: { use: string; lot: string }[]) =>
      list.map(({ use, lot }) => `${use} ${lot}`).sort();
    expect(
      pairs(found.items.flatMap((use) => use.lots.map((lot) => ({ use: use.id, lot: lot.lotId })))),
    ).toEqual(
      pairs(expected.map(({ use, lot }) => ({ use: ids.uses[use] ?? '', lot: ids.lots[lot] ?? '' }))),
    );
    expect(new Set(found.items.map((use) => use.id)).size).toBe(found.items.length);
    for (const item of found.items) {
      const index = ids.uses.indexOf(item.id);
      const use = graph.uses[index];
      if (!use) throw new Error('A use was found that is not in the graph.');
      expect(item.sessionId).toBe(ids.sessions[use.session]);
      expect(item.clientId).toBe(ids.clients[graph.sessions[use.session] ?? -1]);
      expect(item.reversedAt !== null).toBe(use.reversed);
      expect(item.through.includes('mix')).toBe(use.mixed);
      expect(item.through.includes('house blend')).toBe(item.lots.some((lot) => !lot.direct));
      for (const lot of item.lots) {
        const share =
          expected.find((one) => one.use === index && ids.lots[one.lot] === lot.lotId)?.share ?? 0;
        expect(lot.direct).toBe(lot.lotId === item.lotId);
        if (use.microlitres === 0) expect(lot.shareMicrolitres).toBeNull();
        // Told to three digits, so within half of the third.
        else expect((lot.shareMicrolitres ?? 0) / (use.microlitres * share)).toBeCloseTo(1, 2);
      }
    }
    const uses = [...new Set(expected.map(({ use }) => use))].flatMap((use) => graph.uses[use] ?? []);
    const standing = uses.filter((use) => !use.reversed);
    expect(found.totals).toEqual({
      uses: uses.length,
      reversedUses: uses.length - standing.length,
      sessions: new Set(standing.map((use) => use.session)).size,
      clients: new Set(standing.map((use) => graph.sessions[use.session])).size,
    });
  }

  it('finds forward, back and together exactly what an independent model finds', async () => {
    await fc.assert(
      fc.asyncProperty(anyExposureGraph, fc.integer({ min: 1, max: 4 }), async (graph, limit) => {
        const { actor, ids } = await insertGraph(store, graph);
        const all = exposuresInModel(graph);
        const check = async (
          read: (actor: Actor, page: { limit: number; after?: string }) => Promise<TraceView>,
          expected: ExpectedUse[],
        ) => sameAsModel(graph, ids, await allPages((page) => read(actor, page), limit), expected);

        for (const [lot, lotId] of ids.lots.entries()) {
          await check(
            (who, page) => trace.ofLot(who, lotId, page),
            all.filter((one) => one.lot === lot),
          );
        }
        await check((who, page) => trace.ofLots(who, { lotIds: ids.lots, ...page }), all);
        const some = ids.lots.filter((_, lot) => lot % 2 === 0);
        await check(
          (who, page) => trace.ofLots(who, { lotIds: some, ...page }),
          all.filter((one) => one.lot % 2 === 0),
        );
        for (const [session, sessionId] of ids.sessions.entries()) {
          await check(
            (who, page) => trace.ofSession(who, sessionId, page),
            all.filter((one) => graph.uses[one.use]?.session === session),
          );
        }
        for (const [client, clientId] of ids.clients.entries()) {
          await check(
            (who, page) => trace.ofClient(who, clientId, page),
            all.filter((one) => graph.sessions[graph.uses[one.use]?.session ?? -1] === client),
          );
        }
      }),
      { numRuns: runs },
    );
  });

  it('follows a lot through forty blends of blends', async () => {
    const depth = 40;
    const graph: ExposureGraph = {
      lots: [[], ...Array.from({ length: depth }, (_, parent) => [{ parent, microlitres: 1_000 }])],
      clients: 1,
      sessions: [0],
      uses: [{ session: 0, lot: depth, microlitres: 100, mixed: true, reversed: false }],
    };
    const { actor, ids } = await insertGraph(store, graph);
    const forward = await trace.ofLot(actor, ids.lots[0] ?? '', {});
    expect(forward.items.map((use) => use.lots)).toMatchObject([
      [{ lotId: ids.lots[0], shareMicrolitres: 100 }],
    ]);
    const back = await trace.ofClient(actor, ids.clients[0] ?? '', {});
    expect(back.items[0]?.lots.map((lot) => lot.lotId).sort()).toEqual([...ids.lots].sort());
  });
});
