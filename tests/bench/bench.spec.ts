import { spawn } from 'node:child_process';
import { text } from 'node:stream/consumers';
import { describe, expect, it } from 'vitest';
import { hasRedis } from '../support/redis.js';
import { engines } from '../support/service.js';

const soak = process.env.SOAK !== undefined;

async function runBench(environment: Record<string, string>): Promise<{ code: number | null; told: string }> {
  const child = spawn(process.execPath, ['dist/tests/bench/bench.js'], {
    env: { PATH: process.env.PATH, BENCH_SMALL: '1', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const code = new Promise<number | null>((resolve) => child.once('exit', resolve));
  const [told, complaint] = await Promise.all([text(child.stdout), text(child.stderr)]);
  return { code: await code, told: told + complaint };
}

// How fast anything is depends on the machine and is never a test; that both sides do the same work is.
describe('the bench, run small', { timeout: 180_000 }, () => {
  it('finds the service and the bare handler to have written the same, and the traces to be equal', async () => {
    const { code, told } = await runBench({
      BENCH_ONLY: `verdicts,completions,traces,verifications,projections,plans${soak ? ',sign-in' : ''}`,
      BENCH_SEED: '7',
      BENCH_TRACE_MOVEMENTS: '5000',
      BENCH_VERIFY_MOVEMENTS: '2000',
    });
    expect(told).toContain('seed 7');
    expect(told).toMatch(/^scan verdicts per second +\d/m);
    expect(told).toMatch(/^completions per second +\d/m);
    if (soak) {
      expect(told).toMatch(/^scan verdicts per second, by token +\d/m);
      expect(told).toMatch(/^scan verdicts per second, by cookie +\d/m);
    }
    expect(told).toMatch(/^first page of a trace of 5 lots in 5,000 movements, ms +\d/m);
    expect(told).toMatch(/^verify 2,000 movements \([\d,]+ rows in all\), s +\d/m);
    expect(told).toMatch(/^simulated item-days per second, each further candidate +\d/m);
    expect(told).toMatch(/^one policy for 20 items, 120 days, 200 paths, s of processor +\d/m);
    expect(told).toMatch(/^a whole plan, 24 items, 200 sessions, [\d,]+ candidates, s +\d/m);
    expect(told).toMatch(/^scan verdict while a plan is made, slowest, ms +\d/m);
    expect(code).toBe(0);
  });

  it.runIf(soak && hasRedis && engines.includes('postgres'))(
    'finds every alert to reach the webhook once, in-process and through Redis',
    async () => {
      const { code, told } = await runBench({
        BENCH_ONLY: 'deliveries',
        LOTWARD_TEST_POSTGRES: process.env.LOTWARD_TEST_POSTGRES ?? '',
      });
      expect(told).toMatch(/^alerts to a webhook per second \(in-process, SQLite\) +\d/m);
      expect(told).toMatch(/^alerts to a webhook per second \(Redis, 1 worker, PostgreSQL\) +\d/m);
      expect(told).toMatch(
        /^one delivery from recorded to received, ms \(Redis, 1 worker, PostgreSQL\) +\d/m,
      );
      expect(code).toBe(0);
    },
  );

  it('refuses a seed that is no whole number', async () => {
    const { code, told } = await runBench({ BENCH_SEED: 'x' });
    expect(told).toContain('BENCH_SEED is "x": a whole number is expected.');
    expect(code).not.toBe(0);
  });
});
