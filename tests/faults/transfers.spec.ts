import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import type { TransferView } from '../../src/stock/transfers/transfers.views.js';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { type Answer, engines } from '../support/service.js';
import { type StudioEnd, TwoStudios } from '../support/two-studios.js';
import { wait } from '../support/waiting.js';

const rounds = Array.from({ length: process.env.SOAK ? 200 : 12 }, (_, index) => index);

/** At the same moment, or the second a little later: so each of them comes first in some rounds, on every engine. */
const leadsInMilliseconds = [0, 10, 40, 160];

function race(round: number, acts: [() => Promise<Answer>, () => Promise<Answer>]): Promise<Answer[]> {
  const [one, other] = acts;
  const [first, second] = round % 2 === 0 ? [one, other] : [other, one];
  const lead = leadsInMilliseconds[Math.floor(round / 2) % leadsInMilliseconds.length] ?? 0;
  return Promise.all([first(), wait(lead).then(second)]);
}

const statusesOf = (answers: readonly Answer[]) => answers.map(({ status }) => status).sort();

describe.each(engines)('what both ends of a transfer do at once on %s', { timeout: 300_000 }, (engine) => {
  let studios: TwoStudios;
  let here: StudioEnd;
  let there: StudioEnd;
  let sql: PlainSql;
  let umber: string;
  let liner: string;

  beforeAll(async () => {
    studios = await TwoStudios.start(engine);
    ({ here, there } = studios);
    sql = await PlainSql.connect(here.service, 'read');
    umber = await here.product({ name: 'Umber' });
    liner = await here.product({ name: 'Liner', kind: 'cartridge' });
    await there.shelf();
  });
  afterAll(async () => {
    expect(await inconsistencies(sql)).toEqual([]);
    await sql.close();
    await studios.dispose();
  });

  const receive = (studio: StudioEnd, productId: string, quantity = 1) =>
    studio.receiveOne(productId, { code: uuidv7(), quantity });
  const sendOne = async () => here.send(there, [{ containerId: await receive(here, umber) }]);
  const arrival = async (transfer: TransferView, id = uuidv7()) => ({
    id,
    lines: await there.arrivedLines(transfer),
  });
  const arrive = (transfer: TransferView, body: object) =>
    there.service.post<{ transfer: TransferView }>(`/transfers/${transfer.id}/arrival`, body);
  const withdraw = (transfer: TransferView) =>
    here.service.post(`/transfers/${transfer.id}/withdrawal`, { reason: 'It never left' });

  it('lets one of two arrivals win, and books the goods once', async () => {
    for (const _ of rounds) {
      const sent = await sendOne();
      const bodies = [await arrival(sent), await arrival(sent)];
      const answers = await Promise.all(bodies.map((body) => arrive(sent, body)));
      expect(statusesOf(answers)).toEqual([201, 409]);
      const { lines } = await there.transfer(sent.id);
      expect(lines[0]?.outcomes).toHaveLength(1);
      expect(lines[0]?.balance.arrived.pieces).toBe(1);
    }
  });

  it('lets either the arrival or the withdrawal win', async () => {
    const winners = new Set<string>();
    for (const round of rounds) {
      const sent = await sendOne();
      const body = await arrival(sent);
      const answers = await race(round, [() => arrive(sent, body), () => withdraw(sent)]);
      expect(statusesOf(answers)).toEqual([201, 409]);
      const [line] = (await here.transfer(sent.id)).lines;
      expect(line?.outcomes).toHaveLength(1);
      winners.add(line?.lineState ?? '');
      const { pieces } = await here.container(line?.containerId ?? '');
      expect(pieces).toBe(line?.lineState === 'withdrawn' ? 1 : 0);
    }
    expect([...winners].sort()).toEqual(['arrived', 'withdrawn']);
  });

  it('sends a bottle once, and no more pieces than a box holds', async () => {
    for (const _ of rounds.slice(0, 4)) {
      const bottle = await receive(here, umber);
      const box = await receive(here, liner, 20);
      const send = (line: object) =>
        here.service.post('/transfers', {
          receiverId: there.service.studioId,
          reason: 'Race',
          lines: [line],
        });
      const bottles = await Promise.all([1, 2, 3].map(() => send({ containerId: bottle })));
      expect(statusesOf(bottles)).toEqual([201, 409, 409]);
      const parts = await Promise.all(Array.from({ length: 9 }, () => send({ containerId: box, pieces: 3 })));
      expect(parts.filter(({ status }) => status === 201)).toHaveLength(6);
      expect((await here.container(box)).pieces).toBe(2);
    }
  });

  it('carries each request out once, though each is sent four times at once', async () => {
    for (const _ of rounds.slice(0, 4)) {
      const send = {
        id: uuidv7(),
        receiverId: there.service.studioId,
        reason: 'Once',
        lines: [{ containerId: await receive(here, umber) }],
      };
      const fourTimes = <Body>(act: () => Promise<Answer<Body>>) => Promise.all([1, 2, 3, 4].map(act));
      const sent = await fourTimes(() => here.service.post<TransferView>('/transfers', send));
      expect(new Set(sent.map(({ status, body }) => `${status} ${body.id}`)).size).toBe(1);
      const transfer = sent[0]?.body;
      if (!transfer) throw new Error('Nothing was sent.');
      const body = await arrival(transfer);
      const arrived = await fourTimes(() => arrive(transfer, body));
      expect(new Set(arrived.map((answer) => JSON.stringify([answer.status, answer.body]))).size).toBe(1);
      expect((await there.transfer(transfer.id)).lines[0]?.balance.arrived.pieces).toBe(1);
    }
  });

  it('never loses a hold between the two: what it meets on the way arrives held, else its place is told', async () => {
    const met = { held: 0, told: 0 };
    for (const round of rounds) {
      const bottle = await here.receive(umber, { code: uuidv7() });
      const sent = await here.send(there, [{ containerId: bottle.containers[0]?.id }]);
      const body = await arrival(sent);
      const answers = await race(round, [
        () => arrive(sent, body),
        () => here.service.post('/holds', { kind: 'recall', reason: 'recall notice', lotId: bottle.lot.id }),
      ]);
      expect(statusesOf(answers)).toEqual([201, 201]);
      const [goods] = (await there.transfer(sent.id)).lines[0]?.outcomes[0]?.goods ?? [];
      const { held, lotId } = await there.container(goods?.containerId ?? '');
      const alerts = (await there.service.seen<AlertPageView>('/alerts?limit=200')).items;
      const told = alerts.some(
        ({ kind, subjectId }) => kind === 'held where it came from' && subjectId === lotId,
      );
      expect({ held, told }).toEqual({ held, told: !held });
      met[held ? 'held' : 'told'] += 1;
    }
    expect(Math.min(met.held, met.told), JSON.stringify(met)).toBeGreaterThan(0);
  });

  it('lets both send, receive, hold and call back across each other without an error', async () => {
    const busy = async (one: StudioEnd, other: StudioEnd): Promise<number[]> => {
      const statuses: number[] = [];
      for (const round of rounds) {
        const lot = await one.receive(umber, { code: uuidv7(), quantity: 2 });
        const lines = lot.containers.map(({ id }) => ({ containerId: id }));
        const sent = await one.send(other, lines);
        const arriving = { lines: await other.arrivedLines(sent) };
        const answers = await Promise.all([
          other.service.post(`/transfers/${sent.id}/arrival`, arriving),
          one.service.post('/holds', { kind: 'quarantine', reason: 'doubt', lotId: lot.lot.id }),
          ...(round % 3 === 0
            ? [one.service.post(`/transfers/${sent.id}/withdrawal`, { reason: 'It never left' })]
            : []),
        ]);
        statuses.push(...answers.map(({ status }) => status));
      }
      return statuses;
    };
    const statuses = (await Promise.all([busy(here, there), busy(there, here)])).flat();
    expect(statuses.filter((status) => status !== 201 && status !== 409)).toEqual([]);
  });
});
