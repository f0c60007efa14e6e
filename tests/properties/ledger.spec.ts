import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Problem } from '../../src/platform/problem.js';
import { Container } from '../../src/stock/container.entity.js';
import { Ledger } from '../../src/stock/ledger.service.js';
import type { MovementKind } from '../../src/stock/vocabulary.js';
import { type BareStock, insertContainer, inTransaction, makeBareStock } from '../support/bare-stock.js';
import { propertySettings } from '../support/property-settings.js';
import { engines, makePostgresDatabase } from '../support/service.js';
import { Store } from '../support/store.js';

interface ModelMovement {
  id: string;
  container: number;
  pieces: number;
  microlitres: number;
  /** Reversed already, or itself a reversal. */
  final: boolean;
}

interface ModelContainer {
  id: string;
  lotId: string;
  pieces: number;
  microlitres: number;
}

/** What should be true, kept by plain additions. */
interface Model {
  containers: ModelContainer[];
  movements: ModelMovement[];
}

interface Real {
  store: Store;
  stock: BareStock;
  ledger: Ledger;
}

type LedgerCommand = fc.AsyncCommand<Model, Real>;

/** Adds a movement to the model as it should have been booked. */
function booked(model: Model, container: number, id: string, pieces: number, microlitres: number): void {
  const held = containerAt(model, container);
  held.pieces += pieces;
  held.microlitres += microlitres;
  model.movements.push({ id, container, pieces, microlitres, final: false });
}

function containerAt(model: Model, index: number): ModelContainer {
  const container = model.containers[index % model.containers.length];
  if (!container) throw new RangeError('The model has no container.');
  return container;
}

/** The balances, the sums of movements and the model say the same, and nothing is below zero. */
async function checkAll({ store, stock }: Real, model: Model): Promise<void> {
  const ids = model.containers.map(({ id }) => id);
  if (ids.length === 0) return;
  const rows = await store.database.read<{
    id: string;
    pieces: number;
    microlitres: number;
    moved_pieces: number;
    moved_microlitres: number;
  }>(
    `SELECT balance.container_id AS id, balance.pieces, balance.microlitres,
       coalesce(sum(movement.pieces), 0) AS moved_pieces, coalesce(sum(movement.microlitres), 0) AS moved_microlitres
     FROM balance LEFT JOIN movement
       ON movement.studio_id = balance.studio_id AND movement.container_id = balance.container_id
     WHERE balance.studio_id = $1 AND balance.container_id IN (${ids.map((_, index) => `$${index + 2}`).join(', ')})
     GROUP BY balance.container_id, balance.pieces, balance.microlitres`,
    [stock.actor.studioId, ...ids],
  );
  expect(rows).toHaveLength(ids.length);
  for (const row of rows) {
    const expected = model.containers.find(({ id }) => id === row.id);
    expect(row).toEqual({
      id: row.id,
      pieces: expected?.pieces,
      microlitres: expected?.microlitres,
      moved_pieces: expected?.pieces,
      moved_microlitres: expected?.microlitres,
    });
    expect(Math.min(row.pieces, row.microlitres)).toBeGreaterThanOrEqual(0);
  }
}

class Receive implements LedgerCommand {
  constructor(
    readonly pieces: number,
    readonly microlitres: number,
  ) {}
  check = () => true;
  async run(model: Model, real: Real): Promise<void> {
    const { pieces, microlitres } = this;
    const made = await inTransaction(real.store, real.stock.actor, async (transaction) => {
      const ids = await insertContainer(transaction, real.stock);
      const occurredAt = transaction.recordedAt;
      const [movement] = await real.ledger.book(transaction, [
        { ...ids, kind: 'received', pieces, microlitres, occurredAt },
      ]);
      return { ...ids, movementId: movement?.id ?? '' };
    });
    model.containers.push({ id: made.containerId, lotId: made.lotId, pieces: 0, microlitres: 0 });
    booked(model, model.containers.length - 1, made.movementId, pieces, microlitres);
    await checkAll(real, model);
  }
  toString = () => `receive ${this.pieces} pieces, ${this.microlitres} µL`;
}

class Open implements LedgerCommand {
  constructor(readonly container: number) {}
  check = (model: Readonly<Model>) => model.containers.length > 0;
  async run(model: Model, real: Real): Promise<void> {
    const { id } = containerAt(model, this.container);
    const { actor } = real.stock;
    await inTransaction(real.store, actor, (transaction) =>
      transaction.update(
        Container,
        { studioId: actor.studioId, id },
        { state: 'opened', openedAt: transaction.recordedAt },
      ),
    );
    await checkAll(real, model);
  }
  toString = () => `open ${this.container}`;
}

/** A use is recorded whatever the book holds: what is missing is adjusted first. */
class Use implements LedgerCommand {
  constructor(
    readonly container: number,
    readonly pieces: number,
    readonly microlitres: number,
  ) {}
  check = (model: Readonly<Model>) => model.containers.length > 0;
  async run(model: Model, real: Real): Promise<void> {
    const index = this.container % model.containers.length;
    const { id: containerId, lotId, ...before } = containerAt(model, index);
    const { pieces, microlitres } = this;
    const done = await inTransaction(real.store, real.stock.actor, (transaction) =>
      real.ledger.bookWhatHappened(transaction, [
        { lotId, containerId, kind: 'used', pieces, microlitres, occurredAt: transaction.recordedAt },
      ]),
    );
    const missing = {
      pieces: Math.max(0, pieces - before.pieces),
      microlitres: Math.max(0, microlitres - before.microlitres),
    };
    expect(done.adjustments).toHaveLength(missing.pieces + missing.microlitres > 0 ? 1 : 0);
    for (const { id } of done.adjustments) booked(model, index, id, missing.pieces, missing.microlitres);
    for (const { id } of done.movements) booked(model, index, id, -pieces, -microlitres);
    await checkAll(real, model);
  }
  toString = () => `use ${this.pieces} pieces, ${this.microlitres} µL of ${this.container}`;
}

/** Waste is refused by the database when the book holds less, and then leaves nothing behind. */
class Waste implements LedgerCommand {
  constructor(
    readonly container: number,
    readonly pieces: number,
    readonly microlitres: number,
  ) {}
  check = (model: Readonly<Model>) => model.containers.length > 0;
  async run(model: Model, real: Real): Promise<void> {
    const index = this.container % model.containers.length;
    const { id: containerId, lotId, ...before } = containerAt(model, index);
    const { pieces, microlitres } = this;
    const wasting = inTransaction(real.store, real.stock.actor, (transaction) =>
      real.ledger.book(transaction, [
        { lotId, containerId, kind: 'wasted', pieces, microlitres, occurredAt: transaction.recordedAt },
      ]),
    );
    if (pieces > before.pieces || microlitres > before.microlitres) {
      await expect(wasting).rejects.toThrow(/never_below_zero/);
    } else {
      for (const { id } of await wasting) booked(model, index, id, -pieces, -microlitres);
    }
    await checkAll(real, model);
  }
  toString = () => `waste ${this.pieces} pieces, ${this.microlitres} µL of ${this.container}`;
}

class Transfer implements LedgerCommand {
  constructor(
    readonly container: number,
    readonly pieces: number,
  ) {}
  check = (model: Readonly<Model>) =>
    model.containers.length > 0 && containerAt(model as Model, this.container).pieces >= this.pieces;
  async run(model: Model, real: Real): Promise<void> {
    const { stock, ledger, store } = real;
    const index = this.container % model.containers.length;
    const { id: containerId, lotId } = containerAt(model, index);
    const { pieces } = this;
    const moved = await inTransaction(store, stock.actor, async (transaction) => {
      const target = await insertContainer(transaction, stock, lotId);
      const half = (kind: MovementKind, container: string) => ({
        lotId,
        containerId: container,
        kind,
        pieces,
        microlitres: 0,
        occurredAt: transaction.recordedAt,
      });
      const movements = await ledger.book(transaction, [
        half('transferred out', containerId),
        half('transferred in', target.containerId),
      ]);
      return { target: target.containerId, out: movements[0]?.id ?? '', into: movements[1]?.id ?? '' };
    });
    model.containers.push({ id: moved.target, lotId, pieces: 0, microlitres: 0 });
    booked(model, index, moved.out, -pieces, 0);
    booked(model, model.containers.length - 1, moved.into, pieces, 0);
    await checkAll(real, model);
  }
  toString = () => `transfer ${this.pieces} pieces of ${this.container}`;
}

/** A movement is reversed once, and an arrival only while what it brought is there. */
class Reverse implements LedgerCommand {
  constructor(readonly movement: number) {}
  check = (model: Readonly<Model>) => model.movements.length > 0;
  async run(model: Model, real: Real): Promise<void> {
    const movement = model.movements[this.movement % model.movements.length];
    if (!movement) throw new RangeError('The model has no movement.');
    const held = containerAt(model, movement.container);
    const reversing = inTransaction(real.store, real.stock.actor, (transaction) =>
      real.ledger.reverse(transaction, movement.id, 'a mistake', transaction.recordedAt),
    );
    const gone = held.pieces < movement.pieces || held.microlitres < movement.microlitres;
    if (movement.final || gone) {
      const refusal = await reversing.then(
        () => undefined,
        (error: unknown) => error,
      );
      expect(refusal).toBeInstanceOf(Problem);
      expect(refusal).toMatchObject({ code: movement.final ? 'wrong-state' : 'not-enough-stock' });
    } else {
      const reversal = await reversing;
      movement.final = true;
      booked(model, movement.container, reversal.id, -movement.pieces, -movement.microlitres);
      const last = model.movements.at(-1);
      if (last) last.final = true;
    }
    await checkAll(real, model);
  }
  toString = () => `reverse ${this.movement}`;
}

const index = fc.nat(20);
const pieces = fc.integer({ min: 1, max: 20 });
const microlitres = fc.integer({ min: 0, max: 500 });
const commands = fc.commands(
  [
    fc.tuple(pieces, microlitres).map((given) => new Receive(...given)),
    index.map((container) => new Open(container)),
    fc.tuple(index, pieces, microlitres).map((given) => new Use(...given)),
    fc.tuple(index, pieces, microlitres).map((given) => new Waste(...given)),
    fc.tuple(index, pieces).map((given) => new Transfer(...given)),
    index.map((movement) => new Reverse(movement)),
  ],
  { maxCommands: 60, size: 'max' },
);

describe.each(engines)('the ledger on %s', (engine) => {
  let store: Store;
  let folder: string;
  let stock: BareStock;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'lotward-ledger-'));
    store = await Store.open(folder, engine === 'postgres' ? await makePostgresDatabase() : undefined);
    stock = await makeBareStock(store);
  });
  afterAll(async () => {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('keeps each balance at the sum of its movements, never below zero, in whatever order things happen', async () => {
    await fc.assert(
      fc.asyncProperty(commands, async (given) => {
        const setUp = () => ({
          model: { containers: [], movements: [] } as Model,
          real: { store, stock, ledger: new Ledger() },
        });
        await fc.asyncModelRun(setUp, given);
      }),
      propertySettings(`ledger on ${engine}`, 40),
    );
  }, 600_000);

  it('lets a movement be neither changed nor deleted', async () => {
    const movementId = await inTransaction(store, stock.actor, async (transaction) => {
      const ids = await insertContainer(transaction, stock);
      const occurredAt = transaction.recordedAt;
      const [movement] = await new Ledger().book(transaction, [
        { ...ids, kind: 'received', pieces: 1, microlitres: 0, occurredAt },
      ]);
      return movement?.id ?? '';
    });
    for (const statement of [
      'UPDATE movement SET pieces = 2 WHERE id = $1',
      'DELETE FROM movement WHERE id = $1',
    ]) {
      const altering = inTransaction(store, stock.actor, (transaction) =>
        transaction.query(statement, [movementId]),
      );
      await expect(altering).rejects.toThrow(/append-only/);
    }
  });
});
