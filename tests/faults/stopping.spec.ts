import { connect, type Socket } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { stopLimitMilliseconds } from '../../src/platform/stopping.js';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { makeSampleStudio } from '../support/sample-studio.js';
import { engines, type RunningService, startService } from '../support/service.js';
import { type SentWrite, StudioLoad } from '../support/studio-load.js';
import { wait } from '../support/waiting.js';

const stops = process.env.SOAK ? 100 : 2;
const workers = 6;
/** How many writes are acknowledged before the service is told to end. */
const writesBefore = { least: 10, most: 60 };

/** Of the given writes those that are on record, by their request id. */
async function recorded(service: RunningService, writes: readonly SentWrite[]): Promise<SentWrite[]> {
  const sql = await PlainSql.connect(service, 'read');
  try {
    const known = await sql.rows<{ id: string }>('SELECT id FROM accepted_request');
    const ids = new Set(known.map(({ id }) => id));
    return writes.filter(({ body }) => ids.has(body.id));
  } finally {
    await sql.close();
  }
}

describe.each(engines)('a service that is told to end while people write, on %s', (engine) => {
  const random = SeededRandom.ofThisRun();
  let service: RunningService;
  let load: StudioLoad;
  let acknowledged = 0;

  beforeAll(async () => {
    process.stdout.write(`stopping on ${engine}: ${stops} times, SEED=${random.seed}\n`);
    service = await startService(engine);
    load = new StudioLoad(service, await makeSampleStudio(service), random);
  });
  afterAll(async () => {
    process.stdout.write(`stopping on ${engine}: ${acknowledged} writes acknowledged\n`);
    await service.dispose();
  });

  it.each(Array.from({ length: stops }, (_, index) => index + 1))(
    'answers all it accepted, keeps all it acknowledged and ends in order: stop %i',
    async (stop) => {
      const before = load.acknowledged.length;
      const work = load.run(workers);
      const enough = before + random.between(writesBefore.least, writesBefore.most);
      while (load.acknowledged.length < enough) await wait(1);
      const started = Date.now();
      const toldAt = performance.now();
      const code = await service.stop(stop % 2 === 0 ? 'SIGINT' : 'SIGTERM');
      await work;
      expect(code).toBe(0);
      expect(Date.now() - started).toBeLessThan(stopLimitMilliseconds);
      const fresh = load.acknowledged.slice(before);
      acknowledged += fresh.length;
      expect(await recorded(service, fresh)).toHaveLength(fresh.length);
      const unanswered = [...load.unanswered];
      load.unanswered.clear();
      // What was sent before was answered, if only that the service ends; what was not is not on record.
      const cutOff = unanswered.filter(({ sentAt, turnedAway }) => sentAt < toldAt && !turnedAway);
      expect(cutOff.map(({ path }) => path)).toEqual([]);
      expect((await recorded(service, unanswered)).map(({ path }) => path)).toEqual([]);

      service = await startService(engine, {
        dataFolder: service.dataFolder,
        databaseUrl: service.databaseUrl,
      });
      load.service = service;
      const sql = await PlainSql.connect(service, 'read');
      expect(await inconsistencies(sql)).toEqual([]);
      await sql.close();
    },
  );
});

describe('a service that was told to end', () => {
  const services: RunningService[] = [];
  const start = async (): Promise<RunningService> => {
    const service = await startService();
    services.push(service);
    return service;
  };
  afterAll(async () => {
    for (const service of services) await service.dispose();
  });

  /** Sends the beginning of a request, which was accepted then and waits for the rest of its body. */
  function begin(url: string): Promise<Socket> {
    const { hostname, port } = new URL(url);
    return new Promise((resolve, reject) => {
      const socket = connect(Number(port), hostname, () => {
        socket.write(
          'POST /api/v1/sign-in HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 2\r\n\r\n{',
        );
        setTimeout(() => resolve(socket), 200);
      });
      socket.on('error', reject);
    });
  }

  /** What comes back on a connection up to its end. */
  function read(socket: Socket): Promise<string> {
    return new Promise((resolve) => {
      let text = '';
      // A character may come in two parts.
      socket.setEncoding('utf8').on('data', (part: string) => {
        text += part;
      });
      socket.once('close', () => resolve(text));
      socket.resume();
    });
  }

  const ended = (child: { once(event: 'exit', listener: (code: number | null) => void): unknown }) =>
    new Promise<number | null>((resolve) => child.once('exit', resolve));

  it('answers what it has accepted, refuses what comes after and says it is not ready', async () => {
    const service = await start();
    const accepted = await begin(service.url);
    const busy = await begin(service.url);
    const idle = connect(Number(new URL(service.url).port), '127.0.0.1');
    const end = ended(service.child);
    service.child.kill('SIGTERM');
    await wait(300);
    // Whoever comes anew is told so, and what keeps the service running that it is not ready.
    expect((await fetch(`${service.url}/api/v1/studios`)).status).toBe(503);
    expect((await fetch(`${service.url}/health/ready`)).status).toBe(503);
    expect((await fetch(`${service.url}/health/live`)).status).toBe(200);
    // On a connection in the middle of a request more may follow.
    const more = ['/health/ready', '/health/live', '/api/v1/studios'].map(
      (path) => `GET ${path} HTTP/1.1\r\nHost: localhost\r\n\r\n`,
    );
    busy.write(`}${more.join('')}`);
    const answers = await read(busy);
    expect(answers.match(/HTTP\/1\.1 \d+/g)).toEqual(
      ['400', '503', '200', '503'].map((status) => `HTTP/1.1 ${status}`),
    );
    expect(answers.match(/"code":"[a-z-]+"/g)).toEqual(
      ['invalid-fields', 'not-ready', 'not-ready'].map((code) => `"code":"${code}"`),
    );
    accepted.write('}');
    expect(await read(accepted)).toMatch(/^HTTP\/1\.1 400 /);
    expect(await end).toBe(0);
    idle.destroy();
  });

  it('brings out whole what it had begun to answer, also to who reads late', async () => {
    const service = await start();
    const count = 40;
    const { hostname, port } = new URL(service.url);
    const whole = await (await fetch(`${service.url}/api/openapi.json`)).text();
    const late = connect(Number(port), hostname);
    late.write('GET /api/openapi.json HTTP/1.1\r\nHost: localhost\r\n\r\n'.repeat(count));
    late.pause();
    await wait(1_000);
    const end = ended(service.child);
    service.child.kill('SIGTERM');
    await wait(1_000);
    expect(service.child.exitCode).toBeNull();
    const answers = await read(late);
    expect(answers.split(whole).length - 1).toBe(count);
    expect(await end).toBe(0);
  });

  it('does not wait for requests that never became whole', async () => {
    const service = await start();
    const { hostname, port } = new URL(service.url);
    const half = connect(Number(port), hostname);
    half.on('error', () => undefined).write('GET /health/live HTTP/1.1\r\nHost: loc');
    await wait(300);
    const end = ended(service.child);
    service.child.kill('SIGTERM');
    const started = Date.now();
    expect(await end).toBe(0);
    expect(Date.now() - started).toBeLessThan(10_000);
    half.destroy();
  });

  it('gives up, with 1 and words, on what does not come to an end', async () => {
    const service = await start();
    const stuck = await begin(service.url);
    const end = ended(service.child);
    const started = Date.now();
    service.child.kill('SIGTERM');
    expect(await end).toBe(1);
    expect(Date.now() - started).toBeGreaterThan(stopLimitMilliseconds - 500);
    expect(Date.now() - started).toBeLessThan(stopLimitMilliseconds + 5_000);
    expect(service.log.join('')).toContain('could not finish what it had accepted');
    stuck.destroy();
  });

  it('ends at once when it is told again', async () => {
    const service = await start();
    const stuck = await begin(service.url);
    const end = ended(service.child);
    service.child.kill('SIGINT');
    // One Ctrl-C may arrive twice at the same moment.
    service.child.kill('SIGINT');
    await wait(1_500);
    expect(service.child.exitCode).toBeNull();
    const started = Date.now();
    service.child.kill('SIGINT');
    expect(await end).toBe(130);
    // Sooner than by giving up.
    expect(Date.now() - started).toBeLessThan(stopLimitMilliseconds / 2);
    stuck.destroy();
  });
});
