import { existsSync } from 'node:fs';
import { startPostgres } from './postgres.js';
import { leaveFirstStart } from './service.js';
import { awaitSharedProcesses } from './shared-processes.js';

/** Starts one PostgreSQL server for all end-to-end tests, and the service once on each engine, for copies. */
export default async function setUp(): Promise<() => Promise<void>> {
  if (!existsSync('dist/service/main.js')) throw new Error('The service is not built; run `npm test`.');
  const stopPostgres = await startServer();
  const removals = [awaitSharedProcesses(), await leaveFirstStart('sqlite')];
  if (stopPostgres) removals.push(await leaveFirstStart('postgres'));
  return async () => {
    for (const remove of removals) remove();
    await stopPostgres?.();
  };
}

async function startServer(): Promise<(() => Promise<void>) | undefined> {
  try {
    const postgres = await startPostgres();
    process.env.LOTWARD_TEST_POSTGRES = postgres.url;
    return postgres.stop;
  } catch (error) {
    const cause = error instanceof Error ? error.message : String(error);
    if (process.env.CI) throw new Error(`PostgreSQL could not be started: ${cause}`);
    process.stdout.write(
      `\nSKIPPED: everything on PostgreSQL, which could not be started here: ${cause}\n\n`,
    );
    return undefined;
  }
}
