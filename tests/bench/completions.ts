import { SeededRandom } from '../support/random.js';
import { startService } from '../support/service.js';
import type { BenchSettings } from './bench-settings.js';
import { completion, layOutTrays, makeBenchStudio } from './bench-studio.js';
import { endWithBench, makeFolder, removeFolder } from './leave-nothing.js';
import { type Comparison, compareSideBySide } from './side-by-side.js';

/** Completions of sessions with six cartridges and a mix of three bottles. */
export async function benchCompletions(settings: BenchSettings): Promise<Comparison> {
  const random = new SeededRandom(settings.seed);
  const dataFolder = makeFolder();
  try {
    const rounds = settings.warmUpRounds + settings.rounds;
    const studio = await makeBenchStudio(dataFolder, rounds * settings.sessionsPerRound + 1, random);
    const service = endWithBench(await startService('sqlite', { dataFolder }));
    try {
      await layOutTrays(service, studio, random);
    } finally {
      await service.stop();
    }
    const [sampleSession = '', ...sessionIds] = studio.sessionIds;
    const load = Array.from({ length: rounds }, (_, round) =>
      sessionIds
        .slice(round * settings.sessionsPerRound, (round + 1) * settings.sessionsPerRound)
        .map((sessionId) => [completion(studio, sessionId)]),
    );
    return await compareSideBySide(dataFolder, [completion(studio, sampleSession)], load, settings, null);
  } finally {
    removeFolder(dataFolder);
  }
}
