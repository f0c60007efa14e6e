import { setTimeout as sleep } from 'node:timers/promises';
import { startService } from '../support/service.js';
import type { BenchSettings } from './bench-settings.js';
import { endWithBench, makeFolder, removeFolder } from './leave-nothing.js';
import { median } from './median.js';
import { residentMebibytes } from './process-facts.js';

const idleMilliseconds = 3_000;

export interface Starts {
  readyMilliseconds: number;
  /** Resident memory when idle; null where the system does not tell it under /proc. */
  idleMebibytes: number | null;
}

/** Starts on existing data: the time until the service says it is ready, and its resident memory when idle. */
export async function benchStarts(settings: BenchSettings): Promise<Starts> {
  const dataFolder = makeFolder();
  try {
    await endWithBench(await startService('sqlite', { dataFolder })).stop();
    const milliseconds: number[] = [];
    const mebibytes: number[] = [];
    for (let start = 0; start < settings.starts; start += 1) {
      const startedAt = performance.now();
      const service = endWithBench(await startService('sqlite', { dataFolder }));
      milliseconds.push(performance.now() - startedAt);
      await sleep(idleMilliseconds);
      const resident = residentMebibytes(service.child.pid);
      if (resident !== null) mebibytes.push(resident);
      await service.stop();
    }
    return {
      readyMilliseconds: median(milliseconds),
      idleMebibytes: mebibytes.length > 0 ? median(mebibytes) : null,
    };
  } finally {
    removeFolder(dataFolder);
  }
}
