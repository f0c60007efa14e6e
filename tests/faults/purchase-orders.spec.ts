import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { PurchaseOrderView } from '../../src/reorder/purchase-orders/purchase-orders.views.js';
import { MailReceiver } from '../support/mail-receiver.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { RunningService, startInFolder, startService, usualEngine } from '../support/service.js';
import { ServiceClock } from '../support/service-clock.js';
import { StockedStudio } from '../support/stocked-studio.js';
import { until, wait } from '../support/waiting.js';

const at = '/purchase-orders';
const kills = process.env.SOAK ? 200 : 4;
/** Longer than an attempt that was cut off keeps its mail. */
const beyondLease = { minutes: 61 };

interface OrderRow {
  state: string;
  sent_at: string | null;
  expected_delivery_id: string | null;
}

describe.each(usualEngine)('a service killed while orders are sent, on %s', (engine) => {
  const random = SeededRandom.ofThisRun();
  let service: RunningService;
  let mail: MailReceiver;
  let clock: ServiceClock;
  let supplierId: string;
  let productId: string;

  beforeAll(async () => {
    process.stdout.write(`orders: ${kills} kills, SEED=${random.seed}\n`);
    [mail, clock] = [await MailReceiver.start(), new ServiceClock()];
    service = await startService(engine, { environment: environment() });
    productId = await new StockedStudio(service).product({ name: 'Brow', shade: 'Umber' });
    supplierId = (await service.made<{ id: string }>('/suppliers', { name: 'Pellworm Supply' })).id;
    const terms = await service.put(`/supplier-terms/${supplierId}`, {
      ...{ orderWeekdays: [], contact: { mailAddress: 'orders@pellworm.example' } },
    });
    expect(terms.status).toBe(200);
  });
  afterAll(async () => {
    await service.dispose();
    await mail.stop();
    clock.dispose();
  });
  beforeEach(() => mail.forget());

  const environment = () => ({
    ...clock.environment,
    SMTP_URL: mail.url,
    MAIL_FROM: 'orders@lotward.example',
  });
  const startAgain = async () => {
    const { dataFolder, databaseUrl, studioId, token } = service;
    const { url, child, log } = await startInFolder(dataFolder, {
      ...environment(),
      ...(databaseUrl !== undefined && { DATABASE_URL: databaseUrl }),
    });
    service = new RunningService(url, dataFolder, databaseUrl, child, log, studioId, token);
  };
  const approved = async () => {
    const lines = [{ productId, packs: 2, packPriceMinor: 2_490 }];
    const { id } = await service.made<PurchaseOrderView>(at, { supplierId, lines });
    return service.made<PurchaseOrderView>(`${at}/${id}/approval`, { version: 1 });
  };
  const sent = (id: string) =>
    until(`order ${id} as sent`, async () => {
      const order = await service.seen<PurchaseOrderView>(`${at}/${id}`);
      return order.state === 'sent' ? order : undefined;
    });
  const bySql = async <Result>(look: (sql: PlainSql) => Promise<Result>) => {
    const sql = await PlainSql.connect(service, 'read');
    try {
      return await look(sql);
    } finally {
      await sql.close();
    }
  };
  /** An order is sent and expected, or neither. */
  const expectWhole = (id: string, number: number) =>
    bySql(async (sql) => {
      const [order] = await sql.rows<OrderRow>('SELECT * FROM purchase_order WHERE id = $1', [id]);
      const expected = await sql.rows('SELECT id FROM expected_delivery WHERE reference = $1', [
        `Order ${number}`,
      ]);
      const isSent = order?.state === 'sent';
      expect(order?.state).toMatch(/^(approved|sent)$/);
      expect([order?.sent_at !== null, order?.expected_delivery_id !== null]).toEqual([isSent, isSent]);
      expect(expected).toHaveLength(isSent ? 1 : 0);
    });

  it('sends what was cut off once more, and tells the supplier that it may be there already', async () => {
    const order = await approved();
    mail.answer = { held: true };
    await service.made(`${at}/${order.id}/sending`, { version: order.version, as: 'mail' });
    await mail.came(1);
    // The mail server has it, and the service does not know.
    await service.stop('SIGKILL');
    mail.cutConnections();
    mail.release();
    await expectWhole(order.id, order.number);
    await startAgain();
    // Nobody may send it twice unseen: while the attempt may still be under way, it is not sent otherwise.
    const waiting = await service.seen<PurchaseOrderView>(`${at}/${order.id}`);
    expect(waiting).toMatchObject({ state: 'approved', mail: { state: 'waiting', attempts: 0 } });
    const again = { version: waiting.version, as: 'by hand' };
    expect((await service.post(`${at}/${order.id}/sending`, again)).status).toBe(409);
    expect(mail.received).toHaveLength(1);

    await service.stop('SIGKILL');
    clock.forward(beyondLease);
    await startAgain();
    const done = await sent(order.id);
    expect(done.mail).toMatchObject({ state: 'sent', attempts: 1, mayHaveArrivedTwice: true });
    expect(mail.received).toHaveLength(2);
    const [first, second] = mail.received;
    expect(first?.mail.messageId).toBe(second?.mail.messageId);
    expect(first?.mail.text).not.toContain('may have reached you before');
    expect(second?.mail.text).toContain('may have reached you before');
    await expectWhole(order.id, order.number);
  });

  it('has an order sent and expected or neither, whenever it is killed', { timeout: 600_000 }, async () => {
    for (let kill = 0; kill < kills; kill += 1) {
      mail.forget();
      const order = await approved();
      const as = random.below(3) === 0 ? 'by hand' : 'mail';
      const request = { id: uuidv7(), version: order.version, as };
      const sending = service.post(`${at}/${order.id}/sending`, request).catch(() => undefined);
      await wait(random.between(0, 120));
      await service.stop('SIGKILL');
      await sending;
      await expectWhole(order.id, order.number);
      clock.forward(beyondLease);
      await startAgain();
      // Whoever got no answer asks again by the same id: it was accepted, or it is now.
      expect((await service.post(`${at}/${order.id}/sending`, request)).status).toBe(201);
      const done = await sent(order.id);
      await expectWhole(order.id, order.number);
      if (as === 'by hand') expect(mail.received).toHaveLength(0);
      else {
        // Each further one says so itself.
        expect(mail.received.length).toBeGreaterThan(0);
        const warned = mail.received.filter(({ mail: one }) =>
          one.text?.includes('may have reached you before'),
        );
        expect(warned.length).toBeGreaterThanOrEqual(mail.received.length - 1);
        expect(done.mail?.mayHaveArrivedTwice).toBe(warned.length > 0);
      }
    }
  });
});
