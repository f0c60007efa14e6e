import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '../../src/platform/actor.js';
import { ExposedSessions } from '../../src/recalls/exposures/exposed-sessions.service.js';
import { ExposedUses } from '../../src/recalls/exposures/exposed-uses.service.js';
import { ExposureQuestions } from '../../src/recalls/exposures/exposure-question.service.js';
import { Exposures } from '../../src/recalls/exposures/exposures.service.js';
import type { ExposedSessionView, ExposurePageView } from '../../src/recalls/exposures/exposures.views.js';
import { LotNames } from '../../src/recalls/exposures/lot-names.service.js';
import { Recall } from '../../src/recalls/recall.entity.js';
import { RecallLot, RecallLotDecision } from '../../src/recalls/recall-lot.entity.js';
import { RecallRegister } from '../../src/recalls/recall-register.service.js';
import { RecallScope } from '../../src/recalls/recall-scope.entity.js';
import { BlendAncestry } from '../../src/sessions/blend-ancestry.service.js';
import { knownBy, visitKinds } from '../../src/sessions/vocabulary.js';
import {
  anyExposureGraph,
  type ExposureGraph,
  type GraphContainer,
  type InsertedGraph,
  insertGraph,
} from '../support/exposure-graph.js';
import { propertySettings } from '../support/property-settings.js';
import { engines, makePostgresDatabase } from '../support/service.js';
import { Store } from '../support/store.js';

const zone = 'Europe/Vienna';

/** How a lot stands with a recall, and by what: decisions in the order in which they were made. */
interface LotOfRecall {
  lot: number;
  grade: 'certain' | 'possible';
  decisions: ('affected' | 'not affected')[];
}

interface RecalledStudio {
  graph: Required<ExposureGraph>;
  lots: LotOfRecall[];
  /** Lots that an earlier scope met and the one that counts does not. */
  formerly: number[];
}

/** Around the day on which the clocks change, at noon and about midnight by either clock. */
const instant = fc
  .record({
    day: fc.integer({ min: 26, max: 31 }),
    time: fc.constantFrom('10:00:00.000', '21:59:59.999', '22:00:00.000', '22:59:59.999', '23:00:00.000'),
  })
  .map(({ day, time }) => `2026-03-${day}T${time}Z`);

const anyContainer: fc.Arbitrary<GraphContainer> = fc
  .tuple(
    fc.constantFrom('bottle', 'bottle', 'box'),
    fc.option(instant),
    instant,
    fc.option(instant),
    fc.option(instant),
  )
  .map(([form, openedAt, receivedAt, emptiedAt, endedAt]) =>
    form === 'box' ? { form: 'box', receivedAt, emptiedAt, endedAt } : { form: 'bottle', openedAt, endedAt },
  );

const anyRecalledStudio: fc.Arbitrary<RecalledStudio> = anyExposureGraph.chain(
  ({ lots, sessions, uses, ...graph }) => {
    const lot = fc.nat(lots.length - 1);
    return fc
      .record({
        products: fc.array(fc.nat(1), { minLength: lots.length, maxLength: lots.length }),
        containers: fc.array(anyContainer, { minLength: lots.length, maxLength: lots.length }),
        visitKinds: fc.array(fc.constantFrom(...visitKinds), {
          minLength: sessions.length,
          maxLength: sessions.length,
        }),
        useFacts: fc.array(
          fc.record({
            knownBy: fc.constantFrom(...knownBy, 'picked from a list' as const),
            occurredAt: instant,
          }),
          { minLength: uses.length, maxLength: uses.length },
        ),
        recalled: fc.uniqueArray(
          fc.record({
            lot,
            grade: fc.constantFrom('certain' as const, 'possible' as const),
            decisions: fc.array(fc.constantFrom('affected' as const, 'not affected' as const), {
              maxLength: 2,
            }),
          }),
          { selector: (one) => one.lot, maxLength: 6 },
        ),
        formerly: fc.uniqueArray(lot, { maxLength: 2 }),
      })
      .map(({ useFacts, recalled, formerly, containers, ...facts }) => ({
        graph: {
          ...graph,
          ...facts,
          lots,
          sessions,
          // Blends are poured into bottles.
          containers: containers.map((container, index) =>
            (lots[index]?.length ?? 0) > 0 && container.form === 'box'
              ? { form: 'bottle' as const, openedAt: container.receivedAt, endedAt: container.endedAt }
              : container,
          ),
          uses: uses.map((use, index) => ({ ...use, ...useFacts[index] })),
        },
        lots: recalled.map((one) => (one.grade === 'certain' ? { ...one, decisions: [] } : one)),
        formerly,
      }));
  },
);

/** A certain use, one of a list, one of another lot while the recalled one was open, and one recorded by mistake. */
const eachWay: RecalledStudio = {
  graph: {
    lots: [[], []],
    clients: 1,
    sessions: [0],
    uses: [
      { lot: 0, knownBy: 'own label' as const, reversed: false },
      { lot: 0, knownBy: 'picked from a list' as const, reversed: false },
      { lot: 1, knownBy: 'picked from a list' as const, reversed: false },
      { lot: 0, knownBy: 'typed' as const, reversed: true },
    ].map((use) => ({
      session: 0,
      microlitres: 40,
      mixed: false,
      occurredAt: '2026-03-29T10:00:00.000Z',
      ...use,
    })),
    visitKinds: ['patch test'],
    products: [0, 0],
    containers: [
      { form: 'bottle', openedAt: '2026-03-29T21:59:59.999Z', endedAt: null },
      { form: 'bottle', openedAt: null, endedAt: null },
    ],
  },
  lots: [{ lot: 0, grade: 'certain', decisions: [] }],
  formerly: [],
};

const dayOf = (at: string) => DateTime.fromISO(at, { zone }).toISODate() ?? '';

interface ExpectedUse {
  use: number;
  certain: boolean;
  byOpenLot: boolean;
  reasons: string[];
  /** Lots of the recall concerned, by index. */
  lots: number[];
}

/** What must be found, by going from every use to everything it may have been: slow, and made of nothing of the service's. */
function expectedExposures({ graph, lots }: RecalledStudio, now: string): ExpectedUse[] {
  const standing = new Map(
    lots.map(({ lot, grade, decisions }) => [
      lot,
      grade === 'certain' ? 'affected' : (decisions.at(-1) ?? 'undecided'),
    ]),
  );
  const inLot = (lot: number): number[] => [
    ...new Set([lot, ...(graph.lots[lot] ?? []).flatMap(({ parent }) => inLot(parent))]),
  ];
  const concerned = (lot: number) =>
    inLot(lot).filter((part) => standing.get(part) === 'affected' || standing.get(part) === 'undecided');
  const isAffected = (lot: number) => concerned(lot).some((part) => standing.get(part) === 'affected');
  const atHand = (lot: number, day: string): boolean => {
    const container = graph.containers[lot];
    if (!container) return false;
    let [first, last] = [
      container.form === 'bottle' ? container.openedAt : container.receivedAt,
      container.endedAt,
    ];
    if (first === null) return false;
    if (container.form === 'box') {
      const uses = graph.uses.filter((use) => use.lot === lot);
      const at = ({ occurredAt }: (typeof uses)[number]) => occurredAt ?? now;
      // It was there while something was taken of it, whenever it is said to have come.
      const [firstUsed] = uses.map(at).sort();
      if (firstUsed !== undefined && dayOf(firstUsed) <= day && day <= dayOf(first) && firstUsed < first)
        return true;
      if (container.emptiedAt !== null) {
        const poured = graph.lots.some((parents) => parents.some(({ parent }) => parent === lot));
        const moved = uses.filter(({ microlitres }) => microlitres > 0).map(at);
        last ??= [first, container.emptiedAt, ...moved, ...(poured ? [now] : [])].sort().at(-1) ?? null;
      }
    }
    return dayOf(first) <= day && (last === null || day <= dayOf(last));
  };
  return graph.uses.flatMap((use, index): ExpectedUse[] => {
    const picked = use.knownBy === 'picked from a list';
    const itself = concerned(use.lot);
    if (itself.length > 0) {
      const affected = isAffected(use.lot);
      const reasons = [...(affected ? [] : ['lot undecided']), ...(picked ? ['lot picked from a list'] : [])];
      return [{ use: index, certain: reasons.length === 0, byOpenLot: false, reasons, lots: itself }];
    }
    if (!picked) return [];
    const day = dayOf(use.occurredAt ?? now);
    const open = graph.lots
      .map((_, lot) => lot)
      .filter(
        (lot) =>
          graph.products[lot] === graph.products[use.lot] && concerned(lot).length > 0 && atHand(lot, day),
      );
    if (open.length === 0) return [];
    const reasons = [...(open.some(isAffected) ? [] : ['lot undecided']), 'another open lot that day'];
    return [{ use: index, certain: false, byOpenLot: true, reasons, lots: open }];
  });
}

/** Writes the recall with two scopes, of which the second counts. */
async function insertRecall(
  store: Store,
  actor: Actor,
  ids: InsertedGraph,
  { lots, formerly }: RecalledStudio,
): Promise<string> {
  const recallId = uuidv7();
  await store.transactions.write(
    actor,
    { id: null, action: 'test.insert', subject: { kind: 'recall', id: recallId }, content: null },
    async (transaction) => {
      const { studioId, recordedAt } = transaction;
      const recorded = { occurredAt: recordedAt, recordedAt, personId: null, via: 'api' };
      await transaction.insert(Recall, {
        ...{ studioId, id: recallId, chainId: actor.chainId, kind: 'recall', title: 'Umber', chainWide: 0 },
        ...{ openedInStudioId: studioId, state: 'open', openedAt: recordedAt, openedBy: actor.personId },
        ...{ endedAt: null, version: 1 },
      });
      for (const number of [1, 2]) {
        await transaction.insert(RecallScope, {
          ...{ studioId, id: uuidv7(), recallId, number, noticeId: null, scope: { items: [] }, issuer: null },
          ...{
            reference: null,
            issuedOn: null,
            classification: null,
            risk: null,
            remedy: null,
            reason: null,
          },
          ...recorded,
        });
      }
      const met = (scopeNumber: number, lot: number, grade: 'certain' | 'possible'): RecallLot => ({
        ...{ studioId, id: uuidv7(), recallId, scopeNumber, lotId: ids.lots[lot] ?? '', itemIndex: 0, grade },
        reasons: [],
        recordedAt,
      });
      for (const lot of formerly) await transaction.insert(RecallLot, met(1, lot, 'certain'));
      for (const { lot, grade, decisions } of lots) {
        await transaction.insert(RecallLot, met(2, lot, grade));
        for (const decision of decisions) {
          await transaction.insert(RecallLotDecision, {
            ...{ studioId, id: uuidv7(), recallId, lotId: ids.lots[lot] ?? '', decision, reason: 'seen' },
            ...recorded,
          });
        }
      }
    },
  );
  return recallId;
}

describe.each(engines)('exposures of recalls among random lots, blends, lists and days, on %s', (engine) => {
  let store: Store;
  let folder: string;
  let exposures: Exposures;
  let sessions: ExposedSessions;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'lotward-exposures-'));
    store = await Store.open(folder, engine === 'postgres' ? await makePostgresDatabase() : undefined);
    const { database, people } = store;
    const questions = new ExposureQuestions();
    exposures = new Exposures(questions);
    const uses = new ExposedUses(new BlendAncestry(database), new LotNames());
    sessions = new ExposedSessions(database, new RecallRegister(), exposures, questions, uses, people);
  });
  afterAll(async () => {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function allSessions(actor: Actor, recallId: string, limit: number) {
    const items: ExposedSessionView[] = [];
    for (let after: string | undefined; ; ) {
      const page: ExposurePageView = await sessions.page(actor, recallId, { limit, after });
      items.push(...page.items);
      if (page.next === null) return { items, totals: page.totals };
      after = page.next;
    }
  }

  /**
   * The second opinion: in the other direction, from each use back to all that is in it, by the lots' own ids. What is
   * possible by another open lot is not asked here.
   */
  async function countedBackwards(studioId: string, recalled: readonly string[]) {
    const list = recalled.map((_, index) => `$${index + 2}`).join(', ');
    const [row] = await store.database.read<{ uses: number; sessions: number; clients: number }>(
      `WITH RECURSIVE inside (lot_id, part_id) AS (
         SELECT id, id FROM lot WHERE studio_id = $1
         UNION
         SELECT inside.lot_id, blend_parent.parent_lot_id FROM inside
           JOIN blend_parent ON blend_parent.studio_id = $1 AND blend_parent.lot_id = inside.part_id)
       SELECT count(*) AS uses, count(DISTINCT session_id) AS sessions, count(DISTINCT client_id) AS clients
       FROM session_use
       WHERE studio_id = $1 AND lot_id IN (SELECT lot_id FROM inside WHERE part_id IN (${list}))
         AND id NOT IN (SELECT use_id FROM session_use_reversal WHERE studio_id = $1)`,
      [studioId, ...recalled],
    );
    return row;
  }

  it('are exactly those that an independent model and plain SQL find', async () => {
    let [certain, listed, opened, reversed] = [0, 0, 0, 0];
    await fc.assert(
      fc.asyncProperty(anyRecalledStudio, fc.integer({ min: 1, max: 3 }), async (studio, limit) => {
        const { graph } = studio;
        const now = new Date().toISOString();
        const { actor, ids } = await insertGraph(store, graph);
        const recallId = await insertRecall(store, actor, ids, studio);
        const expected = expectedExposures(studio, now);
        const standing = expected.filter(({ use }) => !graph.uses[use]?.reversed);
        const sessionOf = ({ use }: ExpectedUse) => graph.uses[use]?.session ?? -1;
        const clientOf = (one: ExpectedUse) => graph.sessions[sessionOf(one)] ?? -1;
        const distinct = (list: number[]) => new Set(list).size;
        const sure = standing.filter((one) => one.certain);
        const found = await allSessions(actor, recallId, limit);

        const counted = {
          uses: standing.length,
          sessions: distinct(standing.map(sessionOf)),
          clients: distinct(standing.map(clientOf)),
          certainUses: sure.length,
          certainSessions: distinct(sure.map(sessionOf)),
          certainClients: distinct(sure.map(clientOf)),
          openLotUses: standing.filter(({ byOpenLot }) => byOpenLot).length,
          unknownAmountUses: standing.filter(({ use }) => graph.uses[use]?.microlitres === 0).length,
          reversedUses: expected.length - standing.length,
        };
        expect(found.totals).toMatchObject({
          ...counted,
          possibleUses: counted.uses - counted.certainUses,
          possibleSessions: counted.sessions - counted.certainSessions,
          possibleClients: counted.clients - counted.certainClients,
        });
        const byKind = new Map(found.totals.byVisitKind.map((kind) => [kind.visitKind, kind]));
        for (const visitKind of visitKinds) {
          const ofKind = standing.filter((one) => graph.visitKinds[sessionOf(one)] === visitKind);
          expect([byKind.get(visitKind)?.sessions ?? 0, byKind.get(visitKind)?.clients ?? 0]).toEqual([
            distinct(ofKind.map(sessionOf)),
            distinct(ofKind.map(clientOf)),
          ]);
        }

        const told = found.items.flatMap(({ uses, sessionId, clientId }) =>
          uses.map(
            ({ id, reasons, lots }) =>
              `${sessionId} ${clientId} ${id}: ${reasons.join(', ')}: ${lots.map(({ lotId }) => lotId).sort()}`,
          ),
        );
        const wanted = standing.map((one) => {
          const lots = one.lots.map((lot) => ids.lots[lot] ?? '').sort();
          const owners = `${ids.sessions[sessionOf(one)]} ${ids.clients[clientOf(one)]}`;
          return `${owners} ${ids.uses[one.use]}: ${one.reasons.join(', ')}: ${lots}`;
        });
        expect(told.sort()).toEqual(wanted.sort());
        expect(distinct(found.items.map((_, index) => index))).toBe(counted.sessions);

        const clients = await exposures.clients(store.database.read, actor.studioId, recallId);
        expect(clients.map(({ clientId, certainty }) => `${clientId} ${certainty}`).sort()).toEqual(
          [...new Set(standing.map(clientOf))]
            .map((client) => {
              const certainly = sure.some((one) => clientOf(one) === client);
              return `${ids.clients[client]} ${certainly ? 'certain' : 'possible'}`;
            })
            .sort(),
        );

        const recalled = studio.lots.flatMap(({ lot, grade, decisions }) =>
          grade === 'certain' || decisions.at(-1) !== 'not affected' ? [ids.lots[lot] ?? ''] : [],
        );
        if (recalled.length > 0) {
          const direct = standing.filter(({ byOpenLot }) => !byOpenLot);
          expect(await countedBackwards(actor.studioId, recalled)).toEqual({
            uses: direct.length,
            sessions: distinct(direct.map(sessionOf)),
            clients: distinct(direct.map(clientOf)),
          });
        }
        certain += sure.length;
        listed += standing.length - sure.length - counted.openLotUses;
        opened += counted.openLotUses;
        reversed += counted.reversedUses;
      }),
      { ...propertySettings(`exposures on ${engine}`, 40), examples: [[eachWay, 1]] },
    );
    // Each way of being exposed was among them, so that none of the checks above was for nothing.
    expect(Math.min(certain, listed, opened, reversed)).toBeGreaterThan(0);
  }, 600_000);
});
