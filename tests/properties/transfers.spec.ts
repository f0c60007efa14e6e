import fc from 'fast-check';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ArrivalView, TransferView } from '../../src/stock/transfers/transfers.views.js';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { propertySettings } from '../support/property-settings.js';
import { engines } from '../support/service.js';
import { daysAgo } from '../support/stocked-studio.js';
import { type StudioEnd, TwoStudios } from '../support/two-studios.js';

/** A line that was sent, as plain additions know it. */
interface ModelLine {
  transferId: string;
  lineId: string;
  form: 'bottle' | 'box';
  sender: number;
  sourceId: string;
  sent: number;
  arrived: number;
  lost: number;
  ended: boolean;
}

/** A container that stands in a studio. */
interface ModelContainer {
  studio: number;
  id: string;
  form: 'bottle' | 'box';
  pieces: number;
  openedAt: string | null;
  /** Usable no longer than this by any studio so far. */
  lastDay: string | null;
}

interface Model {
  containers: ModelContainer[];
  lines: ModelLine[];
  /** Everything that ever came in from outside, less what was thrown away. */
  pieces: number;
}

interface Real {
  ends: [StudioEnd, StudioEnd];
  sql: PlainSql;
  umber: string;
  liner: string;
}

type Command = fc.AsyncCommand<Model, Real>;

function at<Thing>(things: readonly Thing[], index: number): Thing {
  const thing = things[index % things.length];
  if (thing === undefined) throw new RangeError('There is none.');
  return thing;
}

const standing = (model: Readonly<Model>) => model.containers.filter(({ pieces }) => pieces > 0);

/** By the ledgers of both, by the transfers as each end sees them, and by the model, everything is somewhere, once. */
async function checkAll({ ends, sql }: Real, model: Model): Promise<void> {
  const ids = model.containers.map(({ id }) => id);
  if (ids.length === 0) return;
  const balances = await sql.rows<{ id: string; pieces: number }>(
    `SELECT container_id AS id, pieces FROM balance WHERE container_id IN (${ids.map((_, index) => `$${index + 1}`).join(', ')})`,
    ids,
  );
  const booked = new Map(balances.map(({ id, pieces }) => [id, pieces]));
  for (const { id, pieces } of model.containers) expect(booked.get(id)).toBe(pieces);
  const onHand = balances.reduce((sum, { pieces }) => sum + pieces, 0);
  const inTransit = model.lines.filter(({ ended }) => !ended).reduce((sum, { sent }) => sum + sent, 0);
  const lost = model.lines.reduce((sum, line) => sum + line.lost, 0);
  expect(onHand + inTransit + lost).toBe(model.pieces);
  const last = model.lines.at(-1);
  if (last === undefined) return;
  const views = await Promise.all(ends.map((end) => end.transfer(last.transferId)));
  expect({ ...views[0], direction: '' }).toEqual({ ...views[1], direction: '' });
  const balance = views[0]?.lines.find(({ id }) => id === last.lineId)?.balance;
  const parts = [balance?.inTransit, balance?.arrived, balance?.lost, balance?.back];
  for (const unit of ['pieces', 'microlitres'] as const) {
    expect(parts.reduce((sum, part) => sum + (part?.[unit] ?? Number.NaN), 0)).toBe(balance?.sent[unit]);
  }
  expect(balance).toMatchObject({
    sent: { pieces: last.sent },
    arrived: { pieces: last.arrived },
    lost: { pieces: last.lost },
  });
}

class Receive implements Command {
  constructor(
    readonly studio: number,
    readonly form: 'bottle' | 'box',
    readonly pieces: number,
    readonly openedDaysAgo: number | null,
  ) {}
  check = () => true;
  async run(model: Model, real: Real): Promise<void> {
    const { studio, form } = this;
    const end = real.ends[studio] ?? real.ends[0];
    const quantity = form === 'bottle' ? 1 : this.pieces;
    const productId = form === 'bottle' ? real.umber : real.liner;
    const { containers } = await end.receive(productId, { code: uuidv7().slice(-8), quantity });
    const id = containers[0]?.id ?? '';
    if (form === 'bottle' && this.openedDaysAgo !== null) {
      await end.record(id, 'open', { occurredAt: daysAgo(this.openedDaysAgo) });
    }
    const { openedAt, life } = await end.container(id);
    model.containers.push({ studio, id, form, pieces: quantity, openedAt, lastDay: life.lastDay });
    model.pieces += quantity;
    await checkAll(real, model);
  }
  toString = () => `receive ${this.form} of ${this.pieces} in ${this.studio}`;
}

class Waste implements Command {
  constructor(
    readonly container: number,
    readonly pieces: number,
  ) {}
  check = (model: Readonly<Model>) => standing(model).some(({ form }) => form === 'box');
  async run(model: Model, real: Real): Promise<void> {
    const boxes = standing(model).filter(({ form }) => form === 'box');
    const box = at(boxes, this.container);
    const pieces = Math.min(box.pieces, this.pieces);
    await (real.ends[box.studio] ?? real.ends[0]).record(box.id, 'waste', { pieces, reason: 'Fell down' });
    box.pieces -= pieces;
    model.pieces -= pieces;
    await checkAll(real, model);
  }
  toString = () => `waste ${this.pieces} of ${this.container}`;
}

class Send implements Command {
  constructor(
    readonly container: number,
    readonly pieces: number,
  ) {}
  check = (model: Readonly<Model>) => standing(model).length > 0;
  async run(model: Model, real: Real): Promise<void> {
    const container = at(standing(model), this.container);
    const sender = real.ends[container.studio] ?? real.ends[0];
    const receiver = real.ends[1 - container.studio] ?? real.ends[0];
    const pieces = Math.min(container.pieces, this.pieces);
    const whole = container.form === 'bottle' || pieces === container.pieces;
    const line = { containerId: container.id, ...(whole ? {} : { pieces }) };
    const answer = await sender.service.post<TransferView>('/transfers', {
      receiverId: receiver.service.studioId,
      reason: 'They need it more',
      lines: [line],
    });
    // Damaged goods are put aside on arrival, and what is put aside is not passed on.
    const { held } = await sender.container(container.id);
    expect(answer.status).toBe(held ? 409 : 201);
    if (held) return;
    const sent = whole ? container.pieces : pieces;
    container.pieces -= sent;
    model.lines.push({
      transferId: answer.body.id,
      lineId: answer.body.lines[0]?.id ?? '',
      form: container.form,
      sender: container.studio,
      sourceId: container.id,
      sent,
      arrived: 0,
      lost: 0,
      ended: false,
    });
    await checkAll(real, model);
  }
  toString = () => `send ${this.pieces} of ${this.container}`;
}

/** What arrives may be fewer, more, damaged, or nothing; a second arrival is refused. */
class Arrive implements Command {
  constructor(
    readonly line: number,
    readonly differing: number,
    readonly damaged: number,
  ) {}
  check = (model: Readonly<Model>) => model.lines.length > 0;
  async run(model: Model, real: Real): Promise<void> {
    const line = at(model.lines, this.line);
    const studio = 1 - line.sender;
    const receiver = real.ends[studio] ?? real.ends[0];
    const most = line.form === 'bottle' ? 1 : line.sent + 3;
    const pieces = Math.min(most, Math.max(0, line.sent + this.differing));
    const damaged = Math.min(pieces, this.damaged);
    const answer = await receiver.service.post<ArrivalView>(`/transfers/${line.transferId}/arrival`, {
      lines: [
        {
          lineId: line.lineId,
          pieces,
          ...(pieces === 0 ? {} : { placeId: await receiver.shelf() }),
          ...(damaged === 0 ? {} : { faults: [{ kind: 'damaged package', pieces: damaged }] }),
        },
      ],
    });
    expect(answer.status).toBe(line.ended ? 409 : 201);
    if (line.ended) return;
    line.ended = true;
    line.arrived = Math.min(pieces, line.sent);
    line.lost = line.sent - line.arrived;
    model.pieces += pieces - line.arrived;
    arrivedIn(model, studio, line, answer.body);
    await checkAll(real, model);
  }
  toString = () => `arrive ${this.line} with ${this.differing} more and ${this.damaged} damaged`;
}

class TurnUp implements Command {
  constructor(
    readonly line: number,
    readonly pieces: number,
  ) {}
  check = (model: Readonly<Model>) => model.lines.some(({ lost }) => lost > 0);
  async run(model: Model, real: Real): Promise<void> {
    const line = at(
      model.lines.filter(({ lost }) => lost > 0),
      this.line,
    );
    const studio = 1 - line.sender;
    const receiver = real.ends[studio] ?? real.ends[0];
    const pieces = Math.min(line.lost, this.pieces);
    const placeId = await receiver.shelf();
    const lines = [{ lineId: line.lineId, pieces, placeId, turnedUp: true }];
    const arrival = await receiver.service.made<ArrivalView>(`/transfers/${line.transferId}/arrival`, {
      lines,
    });
    line.arrived += pieces;
    line.lost -= pieces;
    arrivedIn(model, studio, line, arrival);
    await checkAll(real, model);
  }
  toString = () => `${this.pieces} of ${this.line} turn up`;
}

class Withdraw implements Command {
  constructor(readonly line: number) {}
  check = (model: Readonly<Model>) => model.lines.length > 0;
  async run(model: Model, real: Real): Promise<void> {
    const line = at(model.lines, this.line);
    const sender = real.ends[line.sender] ?? real.ends[0];
    const answer = await sender.service.post(`/transfers/${line.transferId}/withdrawal`, {
      reason: 'Not gone',
    });
    expect(answer.status).toBe(line.ended ? 409 : 201);
    if (line.ended) return;
    line.ended = true;
    const source = model.containers.find(({ id }) => id === line.sourceId);
    if (source) source.pieces += line.sent;
    await checkAll(real, model);
  }
  toString = () => `withdraw ${this.line}`;
}

/** What arrived is as open as it was, and usable no longer than before. */
function arrivedIn(model: Model, studio: number, line: ModelLine, { containers }: ArrivalView): void {
  const source = model.containers.find(({ id }) => id === line.sourceId);
  for (const { id, form, pieces, openedAt, life } of containers) {
    expect(openedAt).toBe(source?.openedAt);
    const before = source?.lastDay ?? null;
    if (before !== null) expect(life.lastDay !== null && life.lastDay <= before).toBe(true);
    model.containers.push({ studio, id, form, pieces, openedAt, lastDay: life.lastDay });
  }
}

const index = fc.nat(20);
const pieces = fc.integer({ min: 1, max: 12 });
const commands = fc.commands(
  [
    fc
      .tuple(fc.nat(1), fc.constantFrom('bottle', 'box'), pieces, fc.constantFrom(null, 1, 30))
      .map((given) => new Receive(...given)),
    fc.tuple(index, fc.integer({ min: 1, max: 4 })).map((given) => new Waste(...given)),
    fc.tuple(index, pieces).map((given) => new Send(...given)),
    fc.tuple(index, pieces).map((given) => new Send(...given)),
    fc.tuple(index, fc.integer({ min: -4, max: 2 }), fc.nat(2)).map((given) => new Arrive(...given)),
    fc.tuple(index, fc.constant(0), fc.constant(0)).map((given) => new Arrive(...given)),
    fc.tuple(index, pieces).map((given) => new TurnUp(...given)),
    index.map((line) => new Withdraw(line)),
  ],
  { maxCommands: 30, size: 'max' },
);

describe.each(engines)('two studios on %s', (engine) => {
  let studios: TwoStudios;
  let real: Real;

  beforeAll(async () => {
    // A day behind at times, so that a day of opening is another day there.
    studios = await TwoStudios.start(engine, 'America/New_York');
    const { here, there } = studios;
    const sql = await PlainSql.connect(here.service, 'read');
    const umber = await here.product({ name: 'Umber', openedLife: null });
    const liner = await here.product({ name: 'Liner', kind: 'cartridge' });
    const { version } = await there.service.seen<{ version: number }>('');
    await there.service.patch('', { version, assumedOpenedLife: 'P18M' });
    real = { ends: [here, there], sql, umber, liner };
  });
  afterAll(async () => {
    expect(await inconsistencies(real.sql)).toEqual([]);
    await real.sql.close();
    await studios.dispose();
  });

  it('have every piece on one shelf, in transit or lost, after whatever they do to each other', async () => {
    await fc.assert(
      fc.asyncProperty(commands, async (given) => {
        const setUp = () => ({ model: { containers: [], lines: [], pieces: 0 } as Model, real });
        await fc.asyncModelRun(setUp, given);
      }),
      propertySettings(`transfers on ${engine}`, 15),
    );
  }, 900_000);
});
