import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Transaction } from '../../src/platform/database/transaction.js';
import { type BalanceFigure, imbalance, nothing } from '../../src/recalls/balance/balance-account.js';
import { type LotAccount, RecallAccounts } from '../../src/recalls/balance/recall-accounts.service.js';
import { Recall } from '../../src/recalls/recall.entity.js';
import { RecallFinding } from '../../src/recalls/recall-finding.entity.js';
import { RecallLot } from '../../src/recalls/recall-lot.entity.js';
import { RecallScope } from '../../src/recalls/recall-scope.entity.js';
import { Blend, BlendParent } from '../../src/stock/blend.entity.js';
import { Container } from '../../src/stock/container.entity.js';
import { emptyReason } from '../../src/stock/container-ending.service.js';
import { Ledger, moreThanBooked } from '../../src/stock/ledger.service.js';
import { type BareStock, insertContainer, inTransaction, makeBareStock } from '../support/bare-stock.js';
import { PlainSql } from '../support/plain-sql.js';
import { propertySettings } from '../support/property-settings.js';
import { engines, makePostgresDatabase } from '../support/service.js';
import { Store } from '../support/store.js';

/** What happens in a generated studio, to containers of three lots and to a house blend of the first two. */
type Happening =
  | { what: 'receive'; lot: number; pieces: number; microlitres: number }
  | { what: 'use' | 'pour'; box: number; pieces: number; microlitres: number }
  | { what: 'waste' | 'return' | 'move'; box: number; pieces: number }
  | { what: 'count'; box: number; pieces: number }
  | { what: 'empty'; box: number }
  | { what: 'reverse'; movement: number }
  | { what: 'look'; box: number; found: boolean };

const box = fc.nat({ max: 30 });
const pieces = fc.integer({ min: 1, max: 20 });
const microlitres = fc.integer({ min: 1, max: 9_000 });
const happening: fc.Arbitrary<Happening> = fc.oneof(
  fc.record({ what: fc.constant('receive' as const), lot: fc.nat({ max: 2 }), pieces, microlitres }),
  fc.record({ what: fc.constantFrom('use' as const, 'pour' as const), box, pieces, microlitres }),
  fc.record({ what: fc.constantFrom('waste' as const, 'return' as const, 'move' as const), box, pieces }),
  {
    weight: 3,
    arbitrary: fc.record({ what: fc.constant('count' as const), box, pieces: fc.nat({ max: 25 }) }),
  },
  fc.record({ what: fc.constant('empty' as const), box }),
  {
    weight: 4,
    arbitrary: fc.record({ what: fc.constant('reverse' as const), movement: fc.nat({ max: 60 }) }),
  },
  fc.record({ what: fc.constant('look' as const), box, found: fc.boolean() }),
);

interface Box {
  containerId: string;
  lotId: string;
}

/** A studio in which that happened, and a recall of its lots: the first affected, the second undecided, the third not of it. */
class GeneratedStudio {
  readonly boxes: Box[] = [];
  readonly movements: string[] = [];
  readonly recallId = uuidv7();
  private readonly ledger = new Ledger();

  constructor(
    private readonly stock: BareStock,
    private readonly lotIds: readonly string[],
  ) {}

  async happen(transaction: Transaction, event: Happening): Promise<void> {
    const { recordedAt: occurredAt } = transaction;
    if (event.what === 'receive') {
      const made = await insertContainer(transaction, this.stock, this.lotIds[event.lot]);
      this.boxes.push(made);
      return this.book(transaction, made, { kind: 'received', ...amountOf(event) });
    }
    if (event.what === 'reverse') {
      const id = this.movements[event.movement % Math.max(1, this.movements.length)];
      if (id === undefined) return;
      const reversal = await this.ledger
        .reverse(transaction, id, emptyReason, occurredAt)
        .catch(() => undefined);
      if (reversal) this.movements.push(reversal.id);
      return;
    }
    const of = this.boxes[event.box % Math.max(1, this.boxes.length)];
    if (!of) return;
    const held = (await this.ledger.balances(transaction, [of.containerId])).get(of.containerId) ?? nothing;
    switch (event.what) {
      case 'use':
      case 'pour': {
        const kind = event.what === 'use' ? ('used' as const) : ('blended' as const);
        const { movements, adjustments } = await this.ledger.bookWhatHappened(transaction, [
          { ...of, kind, ...amountOf(event), occurredAt },
        ]);
        this.movements.push(...[...adjustments, ...movements].map(({ id }) => id));
        return;
      }
      case 'waste':
      case 'return':
        return this.book(transaction, of, {
          kind: event.what === 'waste' ? 'wasted' : 'returned',
          pieces: Math.min(held.pieces, event.pieces),
          microlitres: Math.floor(held.microlitres / 2),
        });
      case 'move': {
        const moved = Math.min(held.pieces, event.pieces);
        if (moved === 0) return;
        const into = await insertContainer(transaction, this.stock, of.lotId);
        this.boxes.push(into);
        const half = { pieces: moved, microlitres: 0, occurredAt };
        // Halves are not reversed, so they stay out of what may be.
        await this.ledger.book(transaction, [
          { ...of, kind: 'transferred out', ...half },
          { ...into, kind: 'transferred in', ...half },
        ]);
        return;
      }
      case 'count':
        return this.book(transaction, of, {
          kind: 'adjusted',
          pieces: event.pieces - held.pieces,
          microlitres: 0,
          reason: event.pieces % 2 === 0 ? 'count' : moreThanBooked,
        });
      case 'empty':
        await this.book(transaction, of, {
          kind: 'adjusted',
          pieces: -held.pieces,
          microlitres: -held.microlitres,
          reason: emptyReason,
        });
        await transaction.update(
          Container,
          { studioId: transaction.studioId, id: of.containerId },
          { state: 'finished', endedAt: occurredAt, endedFrom: 'sealed' },
        );
        return;
      case 'look':
        await transaction.insert(RecallFinding, {
          ...said(transaction),
          recallId: this.recallId,
          containerId: of.containerId,
          result: event.found ? 'found' : 'not found',
          placeId: null,
          tag: null,
          photoId: null,
          note: null,
        });
    }
  }

  async openRecall(transaction: Transaction): Promise<void> {
    const { studioId, recordedAt, actor } = transaction;
    await transaction.insert(Recall, {
      studioId,
      id: this.recallId,
      chainId: actor.chainId,
      kind: 'recall',
      title: 'Umber',
      chainWide: 0,
      openedInStudioId: studioId,
      state: 'open',
      openedAt: recordedAt,
      openedBy: actor.personId,
      endedAt: null,
      version: 1,
    });
    await transaction.insert(RecallScope, {
      ...said(transaction),
      recallId: this.recallId,
      number: 1,
      noticeId: null,
      scope: { items: [] },
      issuer: null,
      reference: null,
      issuedOn: null,
      classification: null,
      risk: null,
      remedy: null,
      reason: null,
    });
    const [affected = '', undecided = ''] = this.lotIds;
    const lot = { studioId, recallId: this.recallId, scopeNumber: 1, itemIndex: 0, reasons: [], recordedAt };
    await transaction.insert(RecallLot, [
      { ...lot, id: uuidv7(), lotId: affected, grade: 'certain' },
      { ...lot, id: uuidv7(), lotId: undecided, grade: 'possible' },
    ]);
  }

  /** A house blend of the first box of each of the first two lots. */
  async blend(transaction: Transaction): Promise<void> {
    const { studioId, recordedAt } = transaction;
    const made = await insertContainer(transaction, this.stock);
    this.boxes.push(made);
    const blendId = uuidv7();
    const parents = this.lotIds.slice(0, 2).flatMap((lotId) => {
      const parent = this.boxes.find((each) => each.lotId === lotId);
      return parent ? [{ parent, movementId: uuidv7() }] : [];
    });
    if (parents.length === 0) return;
    await this.ledger.bookWhatHappened(
      transaction,
      parents.map(({ parent, movementId }) => ({
        ...parent,
        id: movementId,
        kind: 'blended' as const,
        pieces: 0,
        microlitres: 500,
        occurredAt: recordedAt,
      })),
    );
    const microlitres = 500 * parents.length;
    await this.book(transaction, made, { kind: 'produced', pieces: 1, microlitres });
    await transaction.insert(Blend, { ...said(transaction), id: blendId, ...made, microlitres });
    await transaction.insert(
      BlendParent,
      parents.map(({ parent, movementId }) => ({
        studioId,
        id: uuidv7(),
        blendId,
        lotId: made.lotId,
        parentLotId: parent.lotId,
        parentContainerId: parent.containerId,
        movementId,
        microlitres: 500,
        recordedAt,
      })),
    );
  }

  private async book(
    transaction: Transaction,
    of: Box,
    booking: Pick<Parameters<Ledger['book']>[1][number], 'kind' | 'pieces' | 'microlitres' | 'reason'>,
  ): Promise<void> {
    const booked = await this.ledger.book(transaction, [
      { ...of, ...booking, occurredAt: transaction.recordedAt },
    ]);
    this.movements.push(...booked.map(({ id }) => id));
  }
}

const amountOf = ({ pieces, microlitres }: { pieces: number; microlitres: number }) => ({
  pieces,
  microlitres,
});

/** What every recorded row begins and ends with. */
function said({ studioId, recordedAt, actor: { personId, via } }: Transaction) {
  return { studioId, id: uuidv7(), occurredAt: recordedAt, recordedAt, personId, via };
}

/**
 * A second opinion: the same account, asked of the tables of movements, containers and findings alone, one plain
 * statement a figure, without the statements, the balances or the rule of the service.
 */
class SecondOpinion {
  constructor(
    private readonly sql: PlainSql,
    private readonly studioId: string,
    private readonly recallId: string,
  ) {}

  async of(lotId: string) {
    const plain = async (where: string, from = 'movement') => {
      const [row] = await this.sql.rows<{ pieces: number | null; microlitres: number | null }>(
        `SELECT sum(movement.pieces) AS pieces, sum(movement.microlitres) AS microlitres
         FROM ${from} WHERE movement.studio_id = $1 AND movement.lot_id = $2 AND ${where}`,
        [this.studioId, lotId],
      );
      return { pieces: row?.pieces ?? 0, microlitres: row?.microlitres ?? 0 };
    };
    const minus = ({ pieces, microlitres }: { pieces: number; microlitres: number }) => ({
      pieces: 0 - pieces,
      microlitres: 0 - microlitres,
    });
    /** With the adjustment itself, and that of which it is the reversal. */
    const adjusted = (where: string) =>
      plain(
        `movement.kind = 'adjusted' AND ${where}`,
        'movement JOIN movement AS said ON said.studio_id = movement.studio_id AND said.id = coalesce(movement.reverses_id, movement.id)',
      );
    const emptied = `said.reason = '${emptyReason}'`;
    const figures = {
      received: await plain(`kind = 'received'`),
      produced: await plain(`kind = 'produced'`),
      used: minus(await plain(`kind = 'used'`)),
      blended: minus(await plain(`kind = 'blended'`)),
      wasted: minus(await plain(`kind = 'wasted'`)),
      returned: minus(await plain(`kind = 'returned'`)),
      emptied: minus(await adjusted(emptied)),
      'counted more': await adjusted(`NOT (${emptied}) AND said.pieces >= 0 AND said.microlitres >= 0`),
      'counted fewer': minus(
        await adjusted(`NOT (${emptied}) AND (said.pieces < 0 OR said.microlitres < 0)`),
      ),
      'moved between boxes': await plain(`kind IN ('transferred in', 'transferred out')`),
    };
    const stands = (where: string) =>
      plain(
        where,
        `movement JOIN container ON container.studio_id = movement.studio_id AND container.id = movement.container_id
           LEFT JOIN recall_finding AS looked ON looked.studio_id = container.studio_id
             AND looked.recall_id = '${this.recallId}' AND looked.container_id = container.id
             AND NOT EXISTS (SELECT 1 FROM recall_finding AS later
               WHERE later.studio_id = looked.studio_id AND later.recall_id = looked.recall_id
                 AND later.container_id = looked.container_id
                 AND (later.recorded_at > looked.recorded_at
                   OR (later.recorded_at = looked.recorded_at AND later.id > looked.id)))`,
      );
    const here = `container.state <> 'finished' AND`;
    return {
      figures,
      onHand: await plain('TRUE'),
      found: await stands(`${here} looked.result = 'found'`),
      notFound: await stands(`${here} looked.result = 'not found'`),
      notLookedFor: await stands(`${here} looked.id IS NULL`),
      onEnded: await stands(`container.state = 'finished'`),
    };
  }
}

describe.each(engines)('the balance of a recall, on %s', (engine) => {
  let dataFolder: string;
  let store: Store;
  let sql: PlainSql;

  beforeAll(async () => {
    dataFolder = mkdtempSync(join(tmpdir(), 'lotward-balance-'));
    const databaseUrl = engine === 'postgres' ? await makePostgresDatabase() : undefined;
    store = await Store.open(dataFolder, databaseUrl);
    sql = await PlainSql.connect({ dataFolder, databaseUrl }, 'read');
  });
  afterAll(async () => {
    await sql.close();
    await store.close();
    rmSync(dataFolder, { recursive: true, force: true });
  });

  it('is what plain SQL makes of the movements, and sums, whatever happened', async () => {
    const { numRuns, seed } = propertySettings(`balance of recalls on ${engine}`, 25);
    await fc.assert(
      fc.asyncProperty(
        fc.array(happening, { minLength: 10, maxLength: 80, size: 'max' }),
        async (happenings) => {
          const stock = await makeBareStock(store);
          const { studioId } = stock.actor;
          const studio = await inTransaction(store, stock.actor, async (transaction) => {
            const lotIds: string[] = [];
            for (let lot = 0; lot < 3; lot += 1) {
              lotIds.push((await insertContainer(transaction, stock)).lotId);
            }
            const generated = new GeneratedStudio(stock, lotIds);
            await generated.openRecall(transaction);
            const half = Math.floor(happenings.length / 2);
            for (const each of happenings.slice(0, half)) await generated.happen(transaction, each);
            await generated.blend(transaction);
            for (const each of happenings.slice(half)) await generated.happen(transaction, each);
            return generated;
          });
          const accounts = await new RecallAccounts().of(store.database.read, studioId, studio.recallId);
          expect(accounts.length).toBeGreaterThanOrEqual(2);
          for (const each of accounts) await agree(each, new SecondOpinion(sql, studioId, studio.recallId));
        },
      ),
      { numRuns, seed },
    );
  }, 120_000);
});

async function agree({ lotId, account, movements }: LotAccount, second: SecondOpinion): Promise<void> {
  const { figures, ...stands } = await second.of(lotId);
  for (const [figure, quantity] of Object.entries(figures)) {
    expect([figure, account.figures[figure as BalanceFigure]]).toEqual([figure, quantity]);
  }
  expect(account.onHand).toEqual(stands.onHand);
  expect(account.found).toEqual(stands.found);
  const said = (reason: string) => {
    const found = account.unexplained.find((each) => each.reason === reason);
    return { pieces: found?.pieces ?? 0, microlitres: found?.microlitres ?? 0 };
  };
  expect(said('not found')).toEqual(stands.notFound);
  expect(said('not looked for')).toEqual(stands.notLookedFor);
  expect(said('on ended containers')).toEqual(stands.onEnded);
  expect(imbalance(account, nothing)).toEqual(nothing);
  expect([...movements.values()].every((count) => count > 0)).toBe(true);
}
