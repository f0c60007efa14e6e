import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inconsistencies } from '../support/consistency.js';
import { PlainSql } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { makeSampleStudio } from '../support/sample-studio.js';
import { type Answer, type ProblemBody, type RunningService, startService } from '../support/service.js';
import { type SentWrite, StudioLoad } from '../support/studio-load.js';
import { until, wait } from '../support/waiting.js';

const kills = process.env.SOAK ? 1_000 : 12;
/** The record grows; a new one after so many kills keeps each look at all of it short. */
const killsPerRecord = 50;
const millisecondsPerKill = 15_000;
const workers = 4;
/** Those acknowledged last are the ones a kill would lose. */
const acknowledgementsRepeated = 12;
const longestWorkMilliseconds = 800;
const muchAcknowledged = 12;

async function seenBySql<Result>(service: RunningService, look: (sql: PlainSql) => Promise<Result>) {
  const sql = await PlainSql.connect(service, 'read');
  try {
    return await look(sql);
  } finally {
    await sql.close();
  }
}

/** What of the given writes is not on record. */
function missingRows(service: RunningService, writes: readonly SentWrite[]): Promise<string[]> {
  return seenBySql(service, async (sql) => {
    const missing: string[] = [];
    for (const { path, body, leaves } of writes) {
      const rows = await sql.rows(`SELECT id FROM "${leaves.table}" WHERE id = $1`, [leaves.id]);
      const requests = await sql.rows('SELECT id FROM accepted_request WHERE id = $1', [body.id]);
      if (rows.length !== 1 || requests.length !== 1) missing.push(`${path} ${JSON.stringify(body)}`);
    }
    return missing;
  });
}

/** The writes that were not carried out. */
function missingRequests(service: RunningService, writes: readonly SentWrite[]): Promise<SentWrite[]> {
  return seenBySql(service, async (sql) => {
    const known = await sql.rows<{ id: string }>('SELECT id FROM accepted_request');
    const ids = new Set(known.map(({ id }) => id));
    return writes.filter(({ body }) => !ids.has(body.id));
  });
}

function isCompletion({ path }: SentWrite): boolean {
  return path.endsWith('/completion');
}

describe('a service that is killed while people write', () => {
  const random = SeededRandom.ofThisRun();
  let service: RunningService;
  let load: StudioLoad;
  let acknowledged = 0;
  /** Writes whose answer was lost: some had been carried out, some had not. */
  const unanswered = { carriedOut: 0, undone: 0 };
  const completions = { acknowledged: 0, unanswered: 0 };
  const refused: SentWrite[] = [];

  async function newRecord(): Promise<void> {
    service = await startService('sqlite');
    load = new StudioLoad(service, await makeSampleStudio(service), random);
  }

  beforeAll(async () => {
    process.stdout.write(`kill: ${kills} times, SEED=${random.seed}\n`);
    await newRecord();
  });

  afterAll(async () => {
    process.stdout.write(
      `kill: ${acknowledged} writes acknowledged (${completions.acknowledged} sessions completed); of those unanswered ${unanswered.carriedOut} had been carried out, ${unanswered.undone} not (${completions.unanswered} completions)\n`,
    );
    await service.dispose();
  });

  /** Kills the service at a random moment of its work and starts it again on what it left. */
  async function killAndRestart(leastAcknowledged: number): Promise<void> {
    const before = load.acknowledged.length;
    const work = load.run(workers);
    await wait(random.between(5, longestWorkMilliseconds));
    await until('work to lose', () => load.acknowledged.length >= before + leastAcknowledged || undefined);
    await service.stop('SIGKILL');
    await work;
    service = await startService('sqlite', { dataFolder: service.dataFolder });
    load.service = service;
  }

  it.each(Array.from({ length: kills }, (_, index) => index + 1))(
    'loses nothing it acknowledged and keeps nothing by halves: kill %i',
    async (kill) => {
      if (kill % killsPerRecord === 0) {
        await service.dispose();
        await newRecord();
      }
      const before = load.acknowledged.length;
      // However busy the machine is, half the kills have much to lose; the others come when they come.
      await killAndRestart(kill % 2 === 0 ? muchAcknowledged : 0);
      const fresh = load.acknowledged.slice(before);
      acknowledged += fresh.length;
      refused.push(...load.refused.splice(0));
      completions.acknowledged += fresh.filter(isCompletion).length;

      expect(await seenBySql(service, inconsistencies)).toEqual([]);
      expect(await missingRows(service, fresh)).toEqual([]);
      for (const write of fresh.slice(-acknowledgementsRepeated)) {
        // The acknowledgement itself is kept, so whoever lost it is told the same again.
        expect(told(await service.post(write.path, write.body)), write.path).toEqual(told(write.answer));
      }

      const open = [...load.unanswered];
      load.unanswered.clear();
      const undone = await missingRequests(service, open);
      unanswered.undone += undone.length;
      unanswered.carriedOut += open.length - undone.length;
      completions.unanswered += open.filter(isCompletion).length;
      for (const write of open) {
        const first = await service.post(write.path, write.body);
        expect(told(await service.post(write.path, write.body)), write.path).toEqual(told(first));
        if (first.status < 300) expect(await missingRows(service, [write])).toEqual([]);
        // Two may have wanted the same: the one repeated later is refused, as it would have been then.
        else expect(first.status, JSON.stringify(first.body)).toBe(409);
      }
      expect(await seenBySql(service, inconsistencies)).toEqual([]);
    },
    millisecondsPerKill,
  );

  it('had work to lose', () => {
    expect(acknowledged).toBeGreaterThanOrEqual((kills / 2) * muchAcknowledged);
    expect(completions.acknowledged).toBeGreaterThan(0);
    // A box that is empty is the only thing that may stand in the way of this work.
    const refusals = refused.filter(
      ({ answer }) => (answer?.body as ProblemBody | undefined)?.code !== 'not-enough-stock',
    );
    expect(refusals.map(({ path, answer }) => ({ path, body: answer?.body }))).toEqual([]);
  });
});

function told(answer: Answer | undefined): { status: number | undefined; body: unknown } {
  return { status: answer?.status, body: answer?.body };
}
