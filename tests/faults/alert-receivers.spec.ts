import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { AlertDeliveryView } from '../../src/alerts/alerts.views.js';
import type { AlertDestinationPageView } from '../../src/alerts/destinations/alert-destinations.views.js';
import { AlertStation, type OutboxState } from '../support/alert-station.js';
import { PlainSql } from '../support/plain-sql.js';
import { until } from '../support/waiting.js';

interface DeliveryPage {
  items: (AlertDeliveryView & { lastError: string | null })[];
}

/** In-process, as a studio runs it by default. */
describe('alerts whose receivers fail', { timeout: 120_000 }, () => {
  let station: AlertStation;
  let webhookId: string;
  let mailboxId: string;

  beforeAll(async () => {
    station = await AlertStation.start('sqlite');
    webhookId = (await station.makeWebhook('/alerts')).id;
    mailboxId = await station.makeMailbox('owner@studio.example');
  });
  beforeEach(() => {
    station.hook.forget();
    station.mail.forget();
  });
  afterAll(() => station?.dispose());

  const openOne = async () => (await station.open(1))[0] ?? '';
  const rowTo = async (destinationId: string, alertId: string): Promise<OutboxState> => {
    const [row] = await station.rowsTo(destinationId, [alertId]);
    if (!row) throw new Error('Nothing was promised.');
    return row;
  };
  /** Waits for an attempt that failed, and gives the row as it stands then. */
  const failed = (destinationId: string, alertId: string) =>
    until('a failed attempt', async () => {
      const row = await rowTo(destinationId, alertId);
      return row.lastError === null ? undefined : row;
    });
  const destination = async (id: string) => {
    const { items } = await station.service.seen<AlertDestinationPageView>('/alert-destinations');
    return items.find((each) => each.id === id);
  };

  it('come when a webhook answers 500, cuts the connection, then takes them', async () => {
    station.hook.answerNext({ status: 500 }, { closesEarly: true }, { status: 503 });
    const alertId = await openOne();
    await station.settled();
    const row = await rowTo(webhookId, alertId);
    expect(row).toMatchObject({ state: 'sent', attempts: 4, begun: 4 });
    expect(station.hook.timesById().get(row.id)).toBe(4);
    expect(new Set(station.hook.received.map(({ body }) => body)).size).toBe(1);
  });

  it('come no sooner than a webhook asks that answers 429', async () => {
    station.hook.answerNext({ status: 429, headers: { 'retry-after': '240' } });
    const alertId = await openOne();
    const askedAt = station.clock.now();
    const row = await failed(webhookId, alertId);
    expect(row.lastError).toContain('429');
    expect(Date.parse(row.nextAttemptAt) - Date.parse(askedAt)).toBeGreaterThan(235_000);
    expect(station.hook.received).toHaveLength(1);
    await station.settled();
    expect(await rowTo(webhookId, alertId)).toMatchObject({ state: 'sent', attempts: 2 });
  });

  it('come when the mail server was down, without the webhook waiting for that', async () => {
    await station.mail.stop();
    const alertId = await openOne();
    const row = await failed(mailboxId, alertId);
    expect(row.state).toBe('pending');
    await until('the webhook', async () => (await rowTo(webhookId, alertId)).state === 'sent' || undefined);
    await station.mail.restart();
    await station.settled();
    expect(await rowTo(mailboxId, alertId)).toMatchObject({ state: 'sent' });
    expect(station.mail.received).toHaveLength(1);
  });

  it('come when the mail server asks to try later, and when it cuts the connection', async () => {
    station.mail.answer = { refusesRecipient: 451 };
    const alertId = await openOne();
    expect((await failed(mailboxId, alertId)).lastError).toContain('451');
    station.mail.answer = { closesEarly: true };
    await station.settled({ of: ({ channel }) => channel !== 'mail' });
    await until('a second attempt', async () => {
      const { nextAttemptAt, attempts, begun } = await rowTo(mailboxId, alertId);
      if (attempts >= 2) return true;
      // While it is being sent no time may pass, else it were taken for cut off.
      if (begun > attempts) return undefined;
      const ahead = Date.parse(nextAttemptAt) - Date.parse(station.clock.now());
      if (ahead > 0) station.clock.forward({ seconds: Math.ceil(ahead / 1_000) });
      return undefined;
    });
    station.mail.answer = {};
    await station.settled();
    expect(await rowTo(mailboxId, alertId)).toMatchObject({ state: 'sent', attempts: 3, begun: 3 });
    // The mail that was cut off and the one that was taken are told apart from two alerts by their one id.
    expect([...station.mail.timesById().values()]).toEqual([2]);
  });

  it('do not wait for a mail server that is slow', async () => {
    station.mail.answer = { held: true };
    const alertId = await openOne();
    await station.mail.came(1);
    const another = await openOne();
    for (const id of [alertId, another]) {
      await until('the webhook', async () => (await rowTo(webhookId, id)).state === 'sent' || undefined);
    }
    for (const id of [alertId, another]) expect((await rowTo(mailboxId, id)).state).toBe('pending');
    station.mail.release();
    await station.settled();
    expect(station.mail.received).toHaveLength(2);
  });

  it('end visibly where a mailbox is refused for good, and are sent again by a touch', async () => {
    station.mail.answer = { refusesRecipient: 550 };
    const alertId = await openOne();
    await station.settled();
    const row = await rowTo(mailboxId, alertId);
    expect(row).toMatchObject({ state: 'undeliverable', attempts: 1 });
    const { items } = await station.service.seen<DeliveryPage>('/alerts/deliveries?state=undeliverable');
    expect(items.find(({ id }) => id === row.id)?.lastError).toContain('550');
    station.mail.answer = {};
    await station.service.made(`/alerts/deliveries/${row.id}/send-again`);
    await station.settled();
    expect(await rowTo(mailboxId, alertId)).toMatchObject({ state: 'sent', id: row.id, lastError: null });
    expect(station.mail.received).toHaveLength(1);
  });

  it('are not sent any more to a webhook that is gone (410), which is said', async () => {
    const { id: goneId } = await station.makeWebhook('/gone');
    station.hook.answerAt('/gone', { status: 410 });
    const alertId = await openOne();
    await until('an end', async () => (await rowTo(goneId, alertId)).state !== 'pending' || undefined);
    expect(await rowTo(goneId, alertId)).toMatchObject({ state: 'undeliverable', attempts: 1 });
    expect(await destination(goneId)).toMatchObject({ state: 'stopped' });
    await openOne();
    expect(await station.rowsTo(goneId)).toHaveLength(1);
    await station.settled();
  });

  it('end visibly where a channel is removed while they wait', async () => {
    const { id: removedId } = await station.makeWebhook('/removed');
    station.hook.answerAt('/removed', { status: 500 });
    const alertId = await openOne();
    await failed(removedId, alertId);
    await station.service.made(`/alert-destinations/${removedId}/remove`);
    await station.settled();
    const row = await rowTo(removedId, alertId);
    expect(row.state).toBe('undeliverable');
    expect(row.lastError).toMatch(/removed/i);
    expect((await rowTo(webhookId, alertId)).state).toBe('sent');
  });

  it('are sent under the same id, and counted, when the service was killed in mid-delivery', async () => {
    station.hook.usually = { held: true };
    const alertId = await openOne();
    await station.hook.came(1);
    await station.service.stop('SIGKILL');
    station.hook.release();
    await station.startAgain();
    await station.settled({ overCutOff: true });
    const row = await rowTo(webhookId, alertId);
    expect(row).toMatchObject({ state: 'sent', begun: 2, attempts: 1 });
    expect(station.hook.timesById().get(row.id)).toBe(2);
    const deliveries = await station.service.seen<AlertDeliveryView[]>(`/alerts/${alertId}/deliveries`);
    expect(deliveries.find(({ id }) => id === row.id)).toMatchObject({ unknownAttempts: 1 });
  });

  it('come, and are swept for once a morning, when the clock steps back and forth', async () => {
    const sql = await PlainSql.connect(station.service, 'read');
    const sweeps = async () =>
      (await sql.rows("SELECT recorded_at FROM audit_entry WHERE action = 'alerts.sweep'")).length;
    const swept = await sweeps();
    station.hook.answerNext({ status: 500 });
    const alertId = await openOne();
    await failed(webhookId, alertId);
    station.clock.forward({ days: -2 });
    const early = await openOne();
    station.clock.forward({ days: 2 });
    await station.settled();
    for (const id of [alertId, early]) expect((await rowTo(webhookId, id)).state).toBe('sent');
    // No morning passed that was not swept for before.
    expect(await sweeps()).toBe(swept);
    await sql.close();
  });

  it('do not wait until a clock that was far ahead, and was set right, is reached', async () => {
    station.clock.forward({ days: 5 });
    station.hook.usually = { status: 500 };
    const alertId = await openOne();
    await failed(webhookId, alertId);
    station.clock.forward({ days: -5 });
    station.hook.usually = {};
    await until('the webhook', async () => (await rowTo(webhookId, alertId)).state === 'sent' || undefined);
    await station.settled();
  });
});
