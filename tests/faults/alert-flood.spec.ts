import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { SweepView } from '../../src/alerts/alerts.views.js';
import { processorMilliseconds } from '../bench/process-facts.js';
import { AlertStation } from '../support/alert-station.js';
import { lackMany } from '../support/many-alerts.js';
import { wait } from '../support/waiting.js';

const alerts = process.env.SOAK ? 10_000 : 3_000;
/** Each is an HTTP call of its own. */
const alertsToWebhook = process.env.SOAK ? 10_000 : 500;
/** Only says when to give up. */
const longestMilliseconds = 300_000;

describe('very many alerts at once', { timeout: 600_000 }, () => {
  let station: AlertStation;

  beforeAll(async () => {
    station = await AlertStation.start('sqlite', undefined, {
      DELIVERIES_PER_SECOND: '10000',
      // A clock that can be moved takes time, and nothing waits for a time here.
      NODE_OPTIONS: '',
    });
  });
  afterAll(() => station?.dispose());

  const processorSeconds = () => (processorMilliseconds(station.service.child.pid) ?? 0) / 1_000;

  /** One sweep opens so many; people go on writing until all are delivered. */
  const openAtOnce = async (count: number) => {
    await lackMany(station.service, station.service.studioId, count);
    const before = processorSeconds();
    const { opened } = await station.service.made<SweepView>('/alerts/sweep');
    expect(opened).toBe(count);
    const startedAt = performance.now();
    const waits: number[] = [];
    const write = async () => {
      const askedAt = performance.now();
      await station.service.made('/places', { name: `Shelf ${count} ${waits.length}`, kind: 'shelf' });
      waits.push(performance.now() - askedAt);
    };
    if (station.hook.usually.held) {
      // What does not end before it is answered waits for no delivery: none is answered before that.
      await station.hook.came(1);
      await write();
      station.hook.release();
    }
    while ((await station.rows(({ state }) => state === 'pending')).length > 0) {
      expect(performance.now() - startedAt).toBeLessThan(longestMilliseconds);
      await write();
      await wait(500);
    }
    const slowest = Math.max(...waits);
    process.stdout.write(
      `${count} alerts at once: delivered ${((performance.now() - startedAt) / 1_000).toFixed(1)} s after they were opened, ` +
        `${(processorSeconds() - before).toFixed(1)} s of a processor, slowest of ${waits.length} writes meanwhile ${Math.round(slowest)} ms\n`,
    );
  };

  it(`delivers ${alerts} to the log, while people are served`, async () => {
    await openAtOnce(alerts);
    const rows = await station.rows();
    expect(rows.filter(({ channel, state }) => channel === 'log' && state === 'sent')).toHaveLength(alerts);
  });

  it(`delivers ${alertsToWebhook} to a webhook, each once, while people are served`, async () => {
    await station.makeWebhook('/alerts');
    station.hook.usually = { held: true };
    await openAtOnce(alertsToWebhook);
    expect(station.hook.received).toHaveLength(alertsToWebhook);
    expect(station.hook.timesById().size).toBe(alertsToWebhook);
    expect(await station.contradictions()).toEqual([]);
  });
});
