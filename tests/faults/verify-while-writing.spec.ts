import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkRecord } from '../../src/operations/verify/record.check.js';
import { openSnapshot } from '../../src/platform/database/snapshot.js';
import { databasePlace } from '../support/plain-sql.js';
import { SeededRandom } from '../support/random.js';
import { makeSampleStudio } from '../support/sample-studio.js';
import { engines, type RunningService, startService } from '../support/service.js';
import { StudioLoad } from '../support/studio-load.js';
import { wait } from '../support/waiting.js';

const looks = process.env.SOAK ? 100 : 8;
const writers = 4;

describe.each(engines)('verifying a record while people write, on %s', { timeout: 300_000 }, (engine) => {
  const random = SeededRandom.ofThisRun();
  let service: RunningService;
  let load: StudioLoad;

  beforeAll(async () => {
    process.stdout.write(`verify while writing on ${engine}: SEED=${random.seed}\n`);
    service = await startService(engine);
    load = new StudioLoad(service, await makeSampleStudio(service), random);
  });
  afterAll(() => service.dispose());

  it('finds nothing wrong, each time in a longer record', async () => {
    const work = load.run(writers);
    const lengths: number[] = [];
    for (let look = 0; look < looks; look += 1) {
      const written = load.acknowledged.length;
      while (load.acknowledged.length < written + 20) await wait(20);
      const snapshot = await openSnapshot(databasePlace(service));
      try {
        const { studios, findings } = await checkRecord(snapshot, { heads: [], unreadable: [] });
        expect(findings).toEqual([]);
        lengths.push(studios[0]?.entries ?? 0);
      } finally {
        await snapshot.close();
      }
    }
    await service.stop('SIGKILL');
    await work;
    expect(lengths).toEqual([...new Set(lengths)].sort((one, other) => one - other));
    expect(lengths).toHaveLength(looks);
  });
});
