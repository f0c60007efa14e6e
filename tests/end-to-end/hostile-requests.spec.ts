import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { residentMebibytes } from '../bench/process-facts.js';
import { ApiDocument } from '../support/api-document.js';
import { placedValues, placeName } from '../support/body-places.js';
import { inconsistencies } from '../support/consistency.js';
import { faultOf, HostileClient } from '../support/hostile/hostile-client.js';
import { hostileRequests, type Sample } from '../support/hostile/hostile-requests.js';
import { answersOutsideStudios, samplesOutsideStudios } from '../support/hostile/samples-outside-studios.js';
import { unreadableRequests } from '../support/hostile/unreadable-requests.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { rawExchange } from '../support/raw-http.js';
import { makeSampleStudio } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, startService, usualEngine } from '../support/service.js';
import { signInOwner } from '../support/signing-in.js';
import { StudioLoad } from '../support/studio-load.js';
import { differences, settled, tableContents } from '../support/table-contents.js';
import { walkStudio } from '../support/walk.js';
import { markedTexts } from '../support/whole-life/texts.js';
import { liveWholeLife } from '../support/whole-life/whole-life.js';

// There are no uploads: nothing is sent to the service but JSON. Documents and photos will bring theirs, with tests of
// files that are not what they claim.

/** In the soak all that there are, else so many of them, chosen anew each time. */
const share = process.env.SOAK ? 1 : 0.1;
const fewest = 2_000 * share;
const fewestPerRoute = 2;
/** The first requests make the process grow to what it needs. */
const warmUp = process.env.SOAK ? 1_000 : 400;
const mostGrowthMebibytes = 100;

describe.each(usualEngine)('hostile requests, on %s', { timeout: 600_000 }, (engine) => {
  const random = SeededRandom.ofThisRun();
  let service: RunningService;
  let document: ApiDocument;
  let sql: PlainSql;
  let samples: Sample[];

  beforeAll(async () => {
    process.stdout.write(`hostile requests on ${engine}: SEED=${random.seed}\n`);
    // So that each request may come from an address of its own.
    service = await startService(engine, { environment: { TRUST_PROXY: '127.0.0.1' } });
    sql = await PlainSql.connect(service, 'read');
    document = await ApiDocument.of(service);
    samples = [...(await samplesOutsideStudios(service, document)), ...(await samplesOf(service, document))];
    await settled(sql);
  }, 300_000);
  afterAll(async () => {
    await sql.close();
    await service.dispose();
  });

  /** Sends them one after the other. @returns what went wrong, and each answer by route: a code, or the status without one */
  const attack = async (attacked: readonly Sample[], share: number, after?: (count: number) => void) => {
    const client = new HostileClient(service.url, service.token);
    const faults: string[] = [];
    const statuses = new Map<number, number>();
    const answers = new Map<string, string[]>();
    let count = 0;
    for await (const request of hostileRequests(attacked, document, random, share)) {
      count += 1;
      after?.(count);
      const about = `${request.method} ${request.target.slice(0, 160)}, ${request.what}`;
      try {
        const answer = await client.send(request);
        statuses.set(answer.status, (statuses.get(answer.status) ?? 0) + 1);
        const fault = faultOf(answer, request.expects);
        const { code } = (fault === null && answer.status >= 400 ? JSON.parse(answer.text) : {}) as {
          code?: string;
        };
        answers.set(request.route, [...(answers.get(request.route) ?? []), code ?? String(answer.status)]);
        if (fault !== null) faults.push(`${about}: ${fault} ${answer.text.slice(0, 200)}`);
      } catch (error) {
        faults.push(`${about}: ${String(error)}`);
      }
    }
    client.close();
    const counts = [...statuses].sort().map(([status, times]) => `${status} ${times} times`);
    process.stdout.write(`${count} hostile requests, answered ${counts.join(', ')}\n`);
    return { faults, count, answers };
  };

  it('are refused in words, change nothing, and leave the service as it was', async () => {
    const before = await tableContents(sql, { written: true });
    let warm: number | null = null;
    const { faults, count, answers } = await attack(samples, share, (sent) => {
      if (sent === warmUp) warm = residentMebibytes(service.child.pid);
    });
    expect(faults).toEqual([]);
    expect(count).toBeGreaterThanOrEqual(fewest);
    const spared = document.routes.filter(({ name }) => (answers.get(name)?.length ?? 0) < fewestPerRoute);
    expect(spared.map(({ name }) => name)).toEqual([]);
    const outside = document.routes.filter(({ isOfStudio }) => !isOfStudio).map(({ name }) => name);
    expect(outside.sort()).toEqual(Object.keys(answersOutsideStudios).sort());
    const reached = outside.map((name) => [
      name,
      answers.get(name)?.find((each) => each === answersOutsideStudios[name]),
    ]);
    expect(Object.fromEntries(reached)).toEqual(answersOutsideStudios);
    expect(differences(before, await tableContents(sql, { written: true }))).toEqual([]);
    const resident = residentMebibytes(service.child.pid);
    // Only where the system tells.
    if (warm !== null && resident !== null) expect(resident - warm).toBeLessThan(mostGrowthMebibytes);
    expect((await fetch(`${service.url}/health/ready`)).status).toBe(200);
    expect((await service.post('/places', { name: 'Still here', kind: 'shelf' })).status).toBe(201);
  });

  it('are refused in words when they are hardly HTTP', async () => {
    const before = await tableContents(sql, { written: true });
    for (const [what, text] of unreadableRequests(new URL(service.url).host, service.token)) {
      const { answer } = await rawExchange(service.url, text);
      const [, status = '0'] = /^HTTP\/1\.1 (\d+)/.exec(answer) ?? [];
      expect(Number(status), `${what}: ${answer.slice(0, 100)}`).toBeGreaterThanOrEqual(400);
      expect(Number(status), what).toBeLessThan(500);
      expect(answer, what).toContain('application/problem+json');
    }
    expect(differences(before, await tableContents(sql, { written: true }))).toEqual([]);
    expect((await fetch(`${service.url}/health/ready`)).status).toBe(200);
  });

  it('are nobody’s with a token or a cookie of which a single byte is another', async () => {
    const before = await tableContents(sql, { written: true });
    const cookie = await signInOwner(service);
    const [name = '', secret = ''] =
      cookie
        .split('; ')
        .find((each) => /sign-in=/.test(each))
        ?.split('=') ?? [];
    expect(secret).toHaveLength(43);
    // Each byte is another once, of letters every second in its case; in the soak in each of these ways.
    const bits = [1, 0x20, 0x40];
    const changed = (text: string) =>
      [...text].flatMap((character, index) => {
        const bit = index % 2 === 1 && /[a-z]/i.test(character) ? 0x20 : 1;
        const others = (process.env.SOAK ? bits : [bit]).map((bit) =>
          String.fromCharCode(character.charCodeAt(0) ^ bit),
        );
        return others.map((other) => text.slice(0, index) + other + text.slice(index + 1));
      });
    const tried = [
      ...changed(service.token).map((token) => ({ authorization: `Bearer ${token}` })),
      ...changed(secret).map((each) => ({ cookie: `${name}=${each}` })),
    ].filter((headers) => !/[^\x21-\x7e ]/.test(Object.values(headers)[0] ?? ''));
    for (const headers of tried) {
      const answer = await service.send<ProblemBody>('GET', `${service.url}/api/v1/me`, undefined, headers);
      expect([answer.status, answer.body.code], JSON.stringify(headers)).toEqual([401, 'sign-in-needed']);
    }
    expect(tried.length).toBeGreaterThan(process.env.SOAK ? 200 : 80);
    expect((await service.send('GET', `${service.url}/api/v1/me`, undefined, { cookie })).status).toBe(200);
    const signedIn = differences(before, await tableContents(sql, { written: true }));
    expect(signedIn.map((line) => line.split(':')[0])).toEqual(['audit_entry']);
  });

  it('do not disturb the work beside them', async () => {
    const load = new StudioLoad(service, await makeSampleStudio(service), random);
    const working = load.run(2);
    // Every route was attacked already; here it is enough that requests of every kind come in between.
    const some = process.env.SOAK ? samples : random.pickSome(samples, samples.length / 10);
    const { faults } = await attack(some, 0.15);
    await service.stop();
    await working;
    expect(faults).toEqual([]);
    expect(load.acknowledged.length).toBeGreaterThan(20);
    const record = await PlainSql.connect(service, 'read');
    expect(await inconsistencies(record)).toEqual([]);
    const requests = await record.rows<{ id: string }>('SELECT id FROM accepted_request');
    await record.close();
    const carriedOut = new Set(requests.map(({ id }) => id));
    expect(load.acknowledged.filter(({ body }) => !carriedOut.has(body.id))).toEqual([]);
  });
});

/** Each kind of request, as it was answered well once. */
async function samplesOf(service: RunningService, document: ApiDocument): Promise<Sample[]> {
  const sent = await liveWholeLife(service, markedTexts('Larkmoor'));
  const { answers, ids } = await walkStudio(service, document);
  const found = new Map<string, Sample>();
  for (const { route, address, answer } of answers) {
    const { pathname, search } = new URL(address);
    if (answer.status < 300) found.set(route.name, { route, target: pathname + search, body: undefined });
  }
  for (const { method, address, body, answer } of sent) {
    const route = document.routeOf(method, address);
    if (!route || method === 'GET' || answer.status >= 300) continue;
    const shape = `${route.name} ${placedValues(body).map(({ at }) => placeName(at))}`;
    found.set(shape, { route, target: new URL(address).pathname, body });
  }
  const [deliveryId] = ids.get('deliveryId') ?? [];
  const [planId] = ids.get('planId') ?? [];
  // Without these nothing would be tried of what no life has been answered well.
  const notLived: Record<string, Omit<Sample, 'route'>> = {
    // Whoever does not say that they listen is refused; the walk found nothing to see there.
    'GET /alerts/live': { target: '/alerts/live', body: undefined },
    // Only what could not be delivered is sent again, and no receiver of a life fails for good.
    'POST /alerts/deliveries/{deliveryId}/send-again': {
      target: `/alerts/deliveries/${deliveryId}/send-again`,
      body: { id: '' },
    },
    // Whether a plan orders anything, no life can know.
    'POST /purchase-orders/from-plan': {
      target: '/purchase-orders/from-plan',
      body: { id: '', planId: planId ?? '', lineNumbers: [1] },
    },
  };
  for (const [name, { target, body }] of Object.entries(notLived)) {
    const route = document.routes.find((each) => each.name === name);
    if (route) found.set(name, { route, target: new URL(`${service.studio}${target}`).pathname, body });
  }
  return [...found.values()];
}
