import { SeededRandom } from '../support/random.js';
import type { BenchSettings } from './bench-settings.js';
import { type BenchStudio, makeBenchStudio, refusedScan, setupScans } from './bench-studio.js';
import type { LoadRequest } from './keep-alive-load.js';
import { makeFolder, removeFolder } from './leave-nothing.js';
import { type Comparison, compareSideBySide, emptyTrays } from './side-by-side.js';

/** Scans at setup: six cartridges by their maker's symbol, three bottles by own label, one bottle that is recalled. */
export async function benchVerdicts(settings: BenchSettings): Promise<Comparison> {
  const random = new SeededRandom(settings.seed);
  const dataFolder = makeFolder();
  try {
    const rounds = settings.warmUpRounds + settings.rounds;
    const studio = await makeBenchStudio(dataFolder, rounds * settings.sessionsPerRound + 1, random);
    const [sampleSession = '', ...sessionIds] = studio.sessionIds;
    const scans = chainOf(studio, sampleSession, random);
    const samples = [...new Set(scans.map(({ kind }) => kind))].flatMap((kind) =>
      scans.filter((scan) => scan.kind === kind).slice(0, 1),
    );
    const chains = sessionIds.map((sessionId) => chainOf(studio, sessionId, random));
    const load = Array.from({ length: rounds }, (_, round) =>
      chains.slice(round * settings.sessionsPerRound, (round + 1) * settings.sessionsPerRound),
    );
    return await compareSideBySide(dataFolder, samples, load, settings, emptyTrays);
  } finally {
    removeFolder(dataFolder);
  }
}

function chainOf(studio: BenchStudio, sessionId: string, random: SeededRandom): LoadRequest[] {
  return [...setupScans(studio, sessionId, random), ...refusedScan(studio, sessionId, random)];
}
