import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { SeededRandom } from '../support/random.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import type { BenchSettings } from './bench-settings.js';
import { type BenchStudio, makeBenchStudio, setupScans } from './bench-studio.js';
import { type LoadRequest, runLoad, type Target } from './keep-alive-load.js';
import { endWithBench, makeFolder, removeFolder } from './leave-nothing.js';
import { median } from './median.js';
import { processorMilliseconds } from './process-facts.js';
import { checkSameRows, databaseName, emptyTrays, runSql } from './side-by-side.js';

/** One kind of request, with the checks of signing in and without; ratios of requests a second, round by round. */
export interface SignInComparison {
  request: string;
  without: Measured;
  by: Record<'token' | 'cookie', Measured & { ratios: number[] }>;
}

interface Measured {
  perSecond: number;
  /** Processor time of a request; null where the system does not tell it under /proc. */
  milliseconds: number | null;
}

type Way = 'without' | 'token' | 'cookie';

const ways: Way[] = ['without', 'token', 'cookie'];
/** Not joined into few files, so that its guard can be exchanged. */
const program = 'dist/src/main.js';
const kinds = ['look-ups of a bottle by its label', 'scan verdicts'] as const;

/**
 * The same load on three copies of a studio: on the service as it is with a token and with the cookie of a browser, and on
 * the service with a guard that admits everybody; in turn, round by round.
 */
export async function benchSignInChecks(settings: BenchSettings): Promise<SignInComparison[]> {
  const random = new SeededRandom(settings.seed);
  const folder = makeFolder();
  const services: RunningService[] = [];
  try {
    const rounds = settings.warmUpRounds + settings.rounds;
    const data = join(folder, 'data');
    const studio = await makeBenchStudio(data, rounds * settings.sessionsPerRound, random);
    const targets = {} as Record<Way, Target>;
    for (const way of ways) {
      const dataFolder = join(folder, way);
      cpSync(data, dataFolder, { recursive: true });
      const environment = way === 'without' ? withoutSignIn(studio.ownerId) : {};
      const service = endWithBench(await startService('sqlite', { dataFolder, environment, program }));
      services.push(service);
      targets[way] = way === 'cookie' ? { url: service.url, cookie: await signIn(service) } : service;
    }
    const pids = ways.map((_, index) => services[index]?.child.pid);
    const measured = new Map(kinds.map((kind) => [kind, [] as Record<Way, Measured>[]]));
    for (let round = 0; round < rounds; round += 1) {
      const sessionIds = studio.sessionIds.slice(
        round * settings.sessionsPerRound,
        (round + 1) * settings.sessionsPerRound,
      );
      for (const kind of kinds) {
        const load = sessionIds.map((sessionId) => chainOf(kind, studio, sessionId, random));
        const found = {} as Record<Way, Measured>;
        for (const way of turned(ways, round)) {
          const pid = pids[ways.indexOf(way)];
          const before = processorMilliseconds(pid);
          const { answers, perSecond } = await runLoad(targets[way], load, settings.connections);
          const after = processorMilliseconds(pid);
          const milliseconds =
            before === null || after === null ? null : (after - before) / answers.flat().length;
          found[way] = { perSecond, milliseconds };
        }
        if (round >= settings.warmUpRounds) measured.get(kind)?.push(found);
      }
      for (const way of ways) runSql(join(folder, way, databaseName), emptyTrays);
    }
    const files = ways.map((way) => join(folder, way, databaseName));
    for (const file of files.slice(1)) checkSameRows(files[0] as string, file);
    return kinds.map((kind) => compared(kind, measured.get(kind) ?? []));
  } finally {
    for (const service of services) await service.stop();
    removeFolder(folder);
  }
}

function withoutSignIn(personId: string): Record<string, string> {
  return {
    NODE_OPTIONS: `--import ${new URL('without-sign-in.js', import.meta.url).href}`,
    BENCH_PERSON: personId,
  };
}

/** As a browser would. @returns its cookies */
async function signIn({ url }: RunningService): Promise<string> {
  const response = await fetch(`${url}/api/v1/sign-in`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(testOwner),
  });
  if (response.status !== 204) throw new Error(`Signing in was answered ${response.status}.`);
  return response.headers
    .getSetCookie()
    .map((cookie) => cookie.split(';')[0])
    .join('; ');
}

function chainOf(
  kind: (typeof kinds)[number],
  studio: BenchStudio,
  sessionId: string,
  random: SeededRandom,
): LoadRequest[] {
  if (kind === 'scan verdicts') return setupScans(studio, sessionId, random);
  return random.pickSome(studio.stock.bottles, 10).map(({ symbol }) => ({
    kind: 'look-up',
    path: `/api/v1/studios/${studio.studioId}/containers/by-label/${symbol}`,
  }));
}

/** Each goes first as often as the others. */
function turned<Item>(items: readonly Item[], by: number): Item[] {
  const first = by % items.length;
  return [...items.slice(first), ...items.slice(0, first)];
}

function compared(request: string, rounds: readonly Record<Way, Measured>[]): SignInComparison {
  const of = (way: Way): Measured => {
    const times = rounds.flatMap((round) => round[way].milliseconds ?? []);
    return {
      perSecond: median(rounds.map((round) => round[way].perSecond)),
      milliseconds: times.length === 0 ? null : times.reduce((sum, time) => sum + time, 0) / times.length,
    };
  };
  const ratiosOf = (way: Way) => rounds.map((round) => round[way].perSecond / round.without.perSecond);
  return {
    request,
    without: of('without'),
    by: {
      token: { ...of('token'), ratios: ratiosOf('token') },
      cookie: { ...of('cookie'), ratios: ratiosOf('cookie') },
    },
  };
}
