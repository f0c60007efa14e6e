import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AuditEntryView, AuditPageView } from '../../src/operations/audit-log/audit-log.views.js';
import type { VerificationView } from '../../src/operations/verify/verification.views.js';
import { hashOfLink } from '../../src/platform/audit/audit-log.js';
import { Attacker } from '../support/attacker.js';
import { exportLog } from '../support/exported-log.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { engines, type ProblemBody, type RunningService, startService } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { Store } from '../support/store.js';

/** Runs the script that is handed to auditors. */
function runScript(...given: string[]): Promise<{ code: number; told: string }> {
  return new Promise((resolve) => {
    execFile(process.execPath, ['src/operations/verify-exported-log.mjs', ...given], (error, out, err) =>
      resolve({ code: error === null ? 0 : Number(error.code), told: out + err }),
    );
  });
}

describe.each(engines)('the audit log on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
    for (const code of ['L1', 'L2', 'L3']) {
      await receive(service, studio, { productId: studio.umberId, code });
    }
  });
  afterAll(() => service.dispose());

  const page = (query = '') => service.seen<AuditPageView>(`/audit-log${query}`);
  const all = async (query: string) => {
    const items: AuditEntryView[] = [];
    for (let after = ''; ; ) {
      const { items: some, next } = await page(`?${query}${after}`);
      items.push(...some);
      if (next === null) return items;
      after = `&after=${next}`;
    }
  };
  const sequences = (items: readonly AuditEntryView[]) => items.map(({ sequence }) => sequence);

  it('shows the newest first or the oldest, page by page to the end and without a gap', async () => {
    const [newest] = (await page()).items;
    const count = newest?.sequence ?? 0;
    expect(count).toBeGreaterThan(10);
    const upwards = Array.from({ length: count }, (_, index) => index + 1);
    expect(sequences(await all('limit=3&order=oldest'))).toEqual(upwards);
    expect(sequences(await all('limit=3'))).toEqual([...upwards].reverse());
    expect(sequences(await all(`limit=${count}`))).toEqual([...upwards].reverse());
  });

  it('says who did what to which rows, and when', async () => {
    const { items } = await page('?action=stock.receive&limit=1');
    expect(items).toEqual([
      {
        sequence: expect.any(Number),
        recordedAt: expect.stringMatching(/^\d{4}-.*Z$/),
        personId: studio.ownerId,
        via: 'api',
        action: 'stock.receive',
        subjectKind: 'delivery',
        subjectId: expect.any(String),
        notes: expect.any(Object),
        rows: expect.arrayContaining([
          { table: 'delivery', id: items[0]?.subjectId, digest: expect.stringMatching(/^[0-9a-f]{64}$/) },
        ]),
        previousHash: expect.stringMatching(/^[0-9a-f]{64}$/),
        hash: expect.stringMatching(/^[0-9a-f]{64}$/),
      },
    ]);
  });

  it('finds by thing, action, person and time', async () => {
    const everything = await all('limit=200');
    const expectFound = async (query: string, isMeant: (entry: AuditEntryView) => boolean) => {
      const found = await all(`limit=2&${query}`);
      expect(sequences(found), query).toEqual(sequences(everything.filter(isMeant)));
      expect(found.length, query).toBeGreaterThan(0);
      expect(found.length, query).toBeLessThan(everything.length);
    };
    const middle = everything[Math.floor(everything.length / 2)]?.recordedAt ?? '';
    await expectFound('subjectKind=delivery', ({ subjectKind }) => subjectKind === 'delivery');
    await expectFound(
      `subjectKind=product&subjectId=${studio.umberId}`,
      ({ subjectId }) => subjectId === studio.umberId,
    );
    await expectFound('action=stock.receive', ({ action }) => action === 'stock.receive');
    await expectFound(`personId=${studio.ownerId}`, ({ personId }) => personId === studio.ownerId);
    await expectFound(`from=${middle}`, ({ recordedAt }) => recordedAt >= middle);
    const offset = encodeURIComponent(middle.replace('Z', '+00:00'));
    await expectFound(`to=${offset}`, ({ recordedAt }) => recordedAt < middle);
  });

  it.each([
    ['after=1000000', 'There is no entry 1000000 to go on from'],
    ['after=0', 'after'],
    ['limit=201', 'limit'],
    ['order=sideways', 'order'],
    ['from=yesterday', 'must be an instant'],
  ])('refuses %s', async (query, words) => {
    const answer = await service.get<ProblemBody>(`/audit-log?${query}`);
    expect([answer.status, JSON.stringify(answer.body)]).toEqual([400, expect.stringContaining(words)]);
  });

  it('is handed out whole, the handing out as its last entry', async () => {
    const id = uuidv7();
    const text = await exportLog(service, id);
    const [opening, ...entries] = text
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    const { items } = await page('?limit=1');
    const last = entries.at(-1);
    expect(items[0]).toMatchObject({ sequence: last.sequence, hash: last.hash });
    expect(last).toMatchObject({ action: 'operations.export-audit-log', personId: studio.ownerId });
    expect(opening).toEqual({
      format: 'lotward-audit-log/1',
      studioId: service.studioId,
      exportedAt: last.recordedAt,
      head: { sequence: last.sequence, hash: last.hash },
    });
    expect(entries.map(({ sequence }) => sequence)).toEqual(entries.map((_, index) => index + 1));
    // Later writes do not change what a repeated request is handed out.
    await service.made('/makers', { name: 'Another maker' });
    expect(await exportLog(service, id)).toBe(text);
  });

  it('holds nobody’s name', async () => {
    const text = await exportLog(service);
    expect(text).not.toContain('Ida Sommer');
    expect(text).not.toContain('5550100');
  });
});

describe.each(engines)('verifying a running service over HTTP, on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let attacker: Attacker;
  beforeAll(async () => {
    service = await startService(engine);
    studio = await makeSampleStudio(service);
    attacker = await Attacker.at(service);
  });
  afterAll(async () => {
    await attacker.close();
    await service.dispose();
  });

  const verify = () => service.seen<VerificationView>('/audit-log/verification');
  const rename = (personId: string | null) =>
    attacker.run("UPDATE person SET name_sealed = 'forged' WHERE id = $1", [personId]);

  it('finds a whole record whole, also when several ask at once', async () => {
    const { items } = await service.seen<AuditPageView>('/audit-log?limit=1');
    const answers = await Promise.all([verify(), verify(), verify()]);
    for (const answer of answers) {
      expect(answer).toMatchObject({ wrong: 0, findings: [], heads: 0, furthestHead: null });
      expect(answer.head).toEqual({ sequence: items[0]?.sequence, hash: items[0]?.hash });
      expect(answer.entries).toBe(items[0]?.sequence);
      expect(answer.rows).toBeGreaterThan(5);
      expect(answer.registerRows).toBeGreaterThan(5);
    }
  });

  it('says no more of another studio of the chain than that it wrote the row in their register', async () => {
    const store = await Store.open(service.dataFolder, service.databaseUrl);
    const { chainId } = await store.ownerOf(service.studioId);
    const other = await store.seenBy(service, await store.makeStudio(undefined, chainId));
    await store.close();
    const [theirs, ours] = [
      await other.made<{ id: string }>('/makers', { name: 'Their maker' }),
      await service.made<{ id: string }>('/makers', { name: 'Our maker' }),
    ];
    await attacker.run("UPDATE maker SET name = name || ' forged' WHERE id IN ($1, $2)", [
      theirs.id,
      ours.id,
    ]);
    const { findings } = await verify();
    const told = (id: string) => findings.find((finding) => finding.id === id)?.message;
    expect(told(theirs.id)).toBe(
      `maker ${theirs.id} of ${chainId} is not as an entry of another studio left it.`,
    );
    expect(told(ours.id)).toMatch(/is not as audit entry \d+ \(catalogue\..*\) left it\.$/);
    for (const [{ id }, name] of [
      [theirs, 'Their maker'],
      [ours, 'Our maker'],
    ] as const) {
      await attacker.run('UPDATE maker SET name = $1 WHERE id = $2', [name, id]);
    }
  });

  it('tells a studio what is wrong with its own record, and nothing of another studio', async () => {
    const store = await Store.open(service.dataFolder, service.databaseUrl);
    const other = await store.makeStudio();
    await store.close();
    await rename(other.personId);
    expect(await verify()).toMatchObject({ wrong: 0, findings: [] });
    await rename(studio.ownerId);
    const { wrong, findings } = await verify();
    expect(wrong).toBe(1);
    expect(findings).toEqual([
      {
        check: 'row',
        table: 'person',
        id: studio.ownerId,
        message: expect.stringMatching(/^person .* is not as audit entry \d+ .* left it\.$/),
      },
    ]);
    expect(JSON.stringify(findings)).not.toContain(other.studioId);
    await attacker.run(`UPDATE service_key SET wrapped_key = 'forged'`);
    const { findings: more } = await verify();
    expect(more.map(({ message }) => message)).toContain(
      'Something is wrong with the database or the backups themselves. Whoever runs the service sees what with `npm run cli -- verify`.',
    );
  });

  it('does not keep the service from ending', async () => {
    const asked = service.get('/audit-log/verification');
    await new Promise((wake) => setTimeout(wake, 100));
    expect(await service.stop()).toBe(0);
    // Finished just in time, or broken off.
    expect([200, 503]).toContain((await asked).status);
  });
});

/** Ends of lines to some readers, and none in JSON. */
const lineEnds = '\u2028\u2029';

describe('an exported log, verified without the service', () => {
  let service: RunningService;
  let folder: string;
  let earlier: string;
  let later: string;

  beforeAll(async () => {
    service = await startStudio('sqlite');
    folder = mkdtempSync(join(tmpdir(), 'lotward-exports-'));
    const studio = await makeSampleStudio(service);
    const { lot } = await receive(service, studio, { productId: studio.umberId, code: 'TWO LINES' });
    const corrected = await service.patch(`/lots/${lot.id}`, {
      version: lot.version,
      useBy: '2031-05-31',
      reason: `misread${lineEnds}on the bottle`,
    });
    expect(corrected.status).toBe(200);
    earlier = await exportLog(service);
    await receive(service, studio, { productId: studio.umberId });
    later = await exportLog(service);
  });
  afterAll(async () => {
    await service.dispose();
    rmSync(folder, { recursive: true, force: true });
  });

  const kept = (text: string | Buffer, name = 'log.ndjson') => {
    const file = join(folder, name);
    writeFileSync(file, text);
    return file;
  };
  const verify = (text: string | Buffer, ...known: string[]) => runScript(kept(text), ...known);
  const lines = (text: string) => text.trimEnd().split('\n');
  const joined = (all: readonly string[]) => `${all.join('\n')}\n`;
  const headOf = (text: string) => {
    const { head } = JSON.parse(lines(text)[0] ?? '');
    return `${head.sequence}:${head.hash}`;
  };

  it('is whole, and the later continues the earlier', async () => {
    expect(await verify(earlier)).toMatchObject({
      code: 0,
      told: expect.stringMatching(/^Whole: the log of studio/),
    });
    const continued = { code: 0, told: expect.stringContaining('It continues entry ') };
    expect(await verify(later, kept(earlier, 'earlier.ndjson'))).toMatchObject(continued);
    expect(await verify(later, headOf(earlier))).toMatchObject(continued);
  });

  it('is whole though a text in it holds line ends of Unicode, which are handed out escaped', async () => {
    expect(earlier).toContain('misread\\u2028\\u2029on the bottle');
    expect(earlier).not.toMatch(new RegExp(`[${lineEnds}]`));
    // As earlier versions handed it out. Read by node:readline it would fall apart, from Node.js 24 on (nodejs/node#57591 [S]).
    const raw = earlier.replace('\\u2028\\u2029', lineEnds);
    expect(await verify(raw)).toMatchObject({ code: 0 });
  });

  it('is not whole when any byte was changed', async () => {
    const bytes = Buffer.from(later);
    const step = Math.floor(bytes.length / 20);
    const passed: number[] = [];
    for (let at = 3; at < bytes.length; at += step) {
      const changed = Buffer.from(bytes);
      changed[at] = (changed[at] ?? 0) ^ 1;
      if ((await verify(changed)).code !== 2) passed.push(at);
    }
    expect(passed).toEqual([]);
  });

  it('is not whole when its opening line was changed', async () => {
    const [opening = '', ...entries] = lines(later);
    const passed: number[] = [];
    for (let at = 0; at < opening.length; at += 13) {
      const bytes = Buffer.from(joined([opening, ...entries]));
      bytes[at] = (bytes[at] ?? 0) ^ 2;
      if ((await verify(bytes)).code !== 2) passed.push(at);
    }
    expect(passed).toEqual([]);
  });

  it('is not whole without one of its lines, or with one twice', async () => {
    const all = lines(later);
    expect(await verify(joined(all.filter((_, index) => index !== 4)))).toMatchObject({
      code: 2,
      told: expect.stringContaining('entry 5 comes after entry 3'),
    });
    expect(await verify(joined([...all.slice(0, 5), ...all.slice(4)]))).toMatchObject({ code: 2 });
    expect(await verify(joined(all.slice(0, -1)))).toMatchObject({
      code: 2,
      told: expect.stringContaining('its end is missing'),
    });
  });

  it('shows a cut end by an earlier head, even when its opening line was made to fit', async () => {
    // What the earlier export was, handed out as the latest.
    const cut = await verify(earlier, headOf(later));
    expect(cut).toMatchObject({ code: 2, told: expect.stringContaining('its end was cut off') });
  });

  it('shows a log that was computed anew by an earlier head, and by nothing else', async () => {
    const forged = computedAnew(later);
    expect(await verify(forged)).toMatchObject({ code: 0 });
    expect(await verify(forged, headOf(earlier))).toMatchObject({
      code: 2,
      told: expect.stringContaining('continues another log'),
    });
    expect(await verify(forged, kept(earlier, 'earlier.ndjson'))).toMatchObject({ code: 2 });
  });

  it('says that it could not look when it is given nothing, or no log', async () => {
    expect(await runScript()).toMatchObject({ code: 1, told: expect.stringContaining('Give a log') });
    expect(await runScript(join(folder, 'none'))).toMatchObject({ code: 1 });
    expect(await verify('')).toMatchObject({ code: 2, told: expect.stringContaining('is empty') });
  });
});

/** The log of somebody who took another action into its third entry and computed every hash after it. */
function computedAnew(text: string): string {
  const [first = '', ...rest] = text.trimEnd().split('\n');
  const opening = JSON.parse(first);
  let previousHash = '0'.repeat(64);
  const entries = rest.map((line) => {
    const { hash: _, ...link } = JSON.parse(line);
    const forged = { ...link, previousHash, ...(link.sequence === 3 ? { action: 'stock.nothing' } : {}) };
    previousHash = hashOfLink(forged);
    return JSON.stringify({ ...forged, hash: previousHash });
  });
  const head = { ...opening.head, hash: previousHash };
  return `${[JSON.stringify({ ...opening, head }), ...entries].join('\n')}\n`;
}
