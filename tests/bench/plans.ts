import { setTimeout as sleep } from 'node:timers/promises';
import type { PlanDetailView, PlanView } from '../../src/reorder/plan/plans.views.js';
import { SeededRandom } from '../support/random.js';
import { type RunningService, startService } from '../support/service.js';
import { Store } from '../support/store.js';
import type { BenchSettings } from './bench-settings.js';
import { makeBenchStudio, setupScans } from './bench-studio.js';
import { type LoadRequest, runLoad } from './keep-alive-load.js';
import { endWithBench, makeFolder, removeFolder } from './leave-nothing.js';
import { median } from './median.js';
import { makePlanData } from './plan-data.js';
import { residentMebibytes } from './process-facts.js';

export interface PlanMeasures {
  items: number;
  sessions: number;
  seconds: number;
  candidates: number;
  /** The most memory of the service meanwhile, of all its threads; null where the system does not tell it. */
  mebibytes: number | null;
  /** Verdicts of scans, milliseconds: of each round the median and the slowest. */
  without: { median: number; slowest: number };
  meanwhile: { median: number; slowest: number };
}

const scansOfSession = 9;
const warmUpTrays = 4;
const pauseMilliseconds = 25;

/** Makes a plan of a whole studio while another scans, and asks how long its verdicts take meanwhile and without. */
export async function benchPlans({ small, seed }: BenchSettings): Promise<PlanMeasures> {
  const random = new SeededRandom(seed);
  const dataFolder = makeFolder();
  try {
    const items = small ? 24 : 1_000;
    const sessions = small ? 200 : 20_000;
    const trays = small ? 10 : 120;
    const studio = await makeBenchStudio(dataFolder, trays, random);
    const data = await makePlanData(dataFolder, items, sessions, random);
    const service = endWithBench(await startService('sqlite', { dataFolder }));
    const store = await Store.open(dataFolder);
    try {
      const planning = await store.seenBy(service, data.actor);
      const scans = studio.sessionIds.flatMap((id) => setupScans(studio, id, random));
      const half = Math.floor((trays - warmUpTrays) / 2) * scansOfSession;
      // The first ones are slower than all that follow: nothing is compiled yet.
      await verdicts(service, scans.splice(0, warmUpTrays * scansOfSession), () => true);
      const without = await verdicts(service, scans.splice(0, half), () => true);
      const { id } = await planning.made<PlanView>('/plans', { purpose: 'plan' });
      let plan = await planning.seen<PlanDetailView>(`/plans/${id}`);
      const isUnderWay = () => plan.state === 'waiting' || plan.state === 'running';
      let mebibytes: number | null = null;
      const looking = (async () => {
        while (isUnderWay()) {
          const resident = residentMebibytes(service.child.pid);
          if (resident !== null) mebibytes = Math.max(mebibytes ?? 0, resident);
          await sleep(200);
          plan = await planning.seen<PlanDetailView>(`/plans/${id}`);
        }
      })();
      const meanwhile = await verdicts(service, scans, isUnderWay);
      await looking;
      if (plan.state !== 'done' || plan.sums === null)
        throw new Error(`The plan ${plan.state}: ${plan.failure}`);
      if (plan.sums.lines !== items) throw new Error(`Of ${items} items ${plan.sums.lines} were planned.`);
      return {
        items,
        sessions,
        seconds: plan.runningSeconds ?? Number.NaN,
        candidates: plan.sums.candidates,
        mebibytes,
        without: { median: median(without), slowest: Math.max(...without) },
        meanwhile: { median: median(meanwhile), slowest: Math.max(...meanwhile) },
      };
    } finally {
      await store.close();
      await service.stop();
    }
  } finally {
    removeFolder(dataFolder);
  }
}

/** One scan after the other, as one artist does, while there is reason to. @returns milliseconds of each */
async function verdicts(
  service: RunningService,
  scans: readonly LoadRequest[],
  isGoingOn: () => boolean,
): Promise<number[]> {
  const milliseconds: number[] = [];
  for (const scan of scans) {
    if (!isGoingOn() && milliseconds.length > 0) break;
    const begun = performance.now();
    await runLoad(service, [[scan]], 1);
    milliseconds.push(performance.now() - begun);
    await sleep(pauseMilliseconds);
  }
  return milliseconds;
}
