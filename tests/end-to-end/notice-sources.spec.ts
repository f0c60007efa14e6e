import { spawnSync } from 'node:child_process';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PlainSql } from '../support/plain-sql.js';
import { type RunningService, startService, strictestEngine } from '../support/service.js';

interface ShownAlert {
  kind: string;
  facts: Record<string, unknown>;
}

const secret = 'k3y-of-the-studio';
const deadlineMilliseconds = 20_000;

const report = (lot: string) => ({
  recall_number: `X-${lot}`,
  recalling_firm: 'Race Works',
  product_description: 'Film',
  code_info: lot,
  reason_for_recall: 'The seal is open',
});

const ofOthers = {
  ...report('ZZ-9'),
  recalling_firm: 'Makers of something else',
  product_description: 'Garden chair',
};

/** The same maker and the same code, on something else: it may be meant. */
const unlike = { ...report('fw-118'), recall_number: 'X-unlike', product_description: 'Varnish' };

/** Asks again and again until something holds. */
async function until<Value>(ask: () => Promise<Value>, holds: (value: Value) => boolean): Promise<Value> {
  for (const started = Date.now(); ; ) {
    const value = await ask();
    if (holds(value)) return value;
    if (Date.now() - started > deadlineMilliseconds) throw new Error(`Still so: ${JSON.stringify(value)}`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

describe.each(strictestEngine)('sources of notices on %s', (engine) => {
  let server: Server;
  let url: string;
  let asked: IncomingMessage[] = [];
  let answer: (response: ServerResponse, request: IncomingMessage) => void;
  let service: RunningService;

  beforeAll(async () => {
    server = createServer((request, response) => {
      asked.push(request);
      answer(response, request);
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/reports.json?api_key=${secret}`;
  });
  afterAll(async () => {
    await service?.dispose();
    server?.closeAllConnections();
    await new Promise((resolve) => server?.close(resolve));
  });

  const environment = () => ({ NOTICE_SOURCES: `enforcement-json ${url}` });
  const alerts = async () =>
    (await service.get<{ items: ShownAlert[] }>('/alerts')).body.items.filter(({ kind }) =>
      ['notice source failing', 'recall notice found'].includes(kind),
    );
  const notices = async () =>
    (await service.get<{ items: { reference: string }[] }>('/recalls/notices')).body.items;
  const states = async (): Promise<Record<string, unknown>[]> => {
    const sql = await PlainSql.connect(service, 'read');
    const rows = await sql.rows<Record<string, unknown>>('SELECT * FROM notice_source_state');
    await sql.close();
    return rows;
  };
  /** Starts the service again with the source due at once, as it is on the next day. */
  const nextDay = async () => {
    const { dataFolder, databaseUrl } = service;
    await service.stop();
    const sql = await PlainSql.connect({ dataFolder, databaseUrl }, 'write');
    await sql.rows(`UPDATE notice_source_state SET next_attempt_at = '2026-01-01T00:00:00.000Z'`);
    await sql.close();
    asked = [];
    service = await startService(engine, { dataFolder, databaseUrl, environment: environment() });
    await until(states, ([state]) => String(state?.next_attempt_at) > '2026-02');
  };

  it('are nobody, unless somebody names them', async () => {
    service = await startService(engine);
    const row = 'maker,product,kind,lot,use by,quantity\nRace Works,Film,consumable,FW-118,2030,5\n';
    await service.made('/opening-stock', { text: row });
    expect([asked.length, await states()]).toEqual([0, []]);
  });

  it('that cannot be read open an alert, whose words show no key', async () => {
    answer = (response) => response.end('<html>Maintenance</html>');
    const { dataFolder, databaseUrl } = service;
    await service.stop();
    service = await startService(engine, { dataFolder, databaseUrl, environment: environment() });
    const [alert] = await until(alerts, (items) => items.length > 0);
    expect(alert).toMatchObject({
      kind: 'notice source failing',
      facts: {
        address: url.replace(/\?.*/, ''),
        cause: expect.stringContaining('no JSON'),
        lastReadAt: null,
      },
    });
    expect(asked).toHaveLength(1);
    expect(JSON.stringify([alert, await states(), service.log])).not.toContain(secret);
  });

  it('that can be read again close it, and what means a lot here waits for an answer', async () => {
    answer = (response) => {
      response.setHeader('etag', '"1"');
      response.end(JSON.stringify({ results: [report('FW-118'), unlike, ofOthers] }));
    };
    await nextDay();
    const open = await until(alerts, (items) => items.every(({ kind }) => kind !== 'notice source failing'));
    expect(open.map(({ kind, facts }) => [kind, facts.reference])).toContainEqual([
      'recall notice found',
      'X-FW-118',
    ]);
    const references = (await notices()).map(({ reference }) => reference);
    expect(references.sort()).toEqual(['X-FW-118', 'X-unlike']);
  });

  it('are asked whether anything is new, and what was seen does not come twice', async () => {
    answer = (response, { headers }) => {
      response.statusCode = headers['if-none-match'] === '"1"' ? 304 : 500;
      response.end();
    };
    await nextDay();
    expect(await states()).toMatchObject([{ failures: 0, last_error: null, etag: '"1"' }]);

    answer = (response) => response.end(JSON.stringify([report('FW-118')]));
    await nextDay();
    expect(await notices()).toHaveLength(2);

    // What changed is another notice.
    answer = (response) => response.end(JSON.stringify([{ ...report('FW-118'), status: 'Completed' }]));
    await nextDay();
    expect(await until(notices, (items) => items.length === 3)).toHaveLength(3);
  });

  it('that ask to be left alone for a time are, without an alert', async () => {
    answer = (response) => {
      response.writeHead(429, { 'retry-after': '7200' });
      response.end();
    };
    const before = Date.now();
    await nextDay();
    const [state] = await states();
    const waits = (Date.parse(String(state?.next_attempt_at)) - before) / 1_000;
    expect(waits).toBeGreaterThan(7_190);
    expect(waits).toBeLessThan(7_400);
    expect(state).toMatchObject({ failures: 1, last_error: 'It answered 429.' });
    expect((await alerts()).map(({ kind }) => kind)).not.toContain('notice source failing');
  });
});

describe('a setting of sources that cannot be used', () => {
  it('keeps the service from starting, with what is wrong', () => {
    const { status, stderr } = spawnSync(process.execPath, ['dist/service/main.js'], {
      env: { PATH: process.env.PATH, NOTICE_SOURCES: 'safety-gate-xml ftp://gate.example/x' },
      encoding: 'utf8',
      timeout: 20_000,
    });
    expect(status).toBe(1);
    expect(stderr).toContain(
      'NOTICE_SOURCES has "ftp://gate.example/x", which is neither an http nor an https address',
    );
  });
});
