import { RunningService, startService, type TestedEngine } from './service.js';
import { endWithAllTests } from './shared-processes.js';
import { Store } from './store.js';

interface SharedService {
  service: RunningService;
  store: Store;
}

/** One of each engine for all files that this process runs; it goes on until all tests end. */
const running = new Map<TestedEngine, Promise<SharedService>>();

/** A studio in a service that other files have studios in as well: nothing ends but with all of them. */
class StudioOfShared extends RunningService {
  override async stop(): Promise<never> {
    throw new Error('Other tests use this service, too; one that is ended is for startService.');
  }

  override async dispose(): Promise<void> {}
}

/**
 * A studio as `startService` has it, in a chain of its own, in a service that was started for earlier files: for what asks
 * its studio alone, and neither the database as a whole nor the process, its log, its folder or who signs in.
 */
export async function startStudio(engine: TestedEngine): Promise<RunningService> {
  const shared = running.get(engine) ?? startShared(engine);
  running.set(engine, shared);
  // The next file tries again.
  shared.catch(() => running.delete(engine));
  const { service, store } = await shared;
  const actor = await store.makeStudio('UTC', undefined, {
    name: 'My studio',
    houseBlends: 'off',
    owner: { name: 'Owner', accountId: null },
  });
  const { url, dataFolder, databaseUrl, child, log, studioId, token } = await store.seenBy(service, actor);
  const studio = new StudioOfShared(url, dataFolder, databaseUrl, child, log, studioId, token);
  await studio.made('/places', { name: 'Shelf', kind: 'shelf' });
  return studio;
}

async function startShared(engine: TestedEngine): Promise<SharedService> {
  // A plan of few paths is one as well.
  const service = await startService(engine, { environment: { PLAN_PATHS: '200' } });
  const { child, dataFolder, databaseUrl } = service;
  endWithAllTests(child, dataFolder);
  return { service, store: await Store.open(dataFolder, databaseUrl) };
}
