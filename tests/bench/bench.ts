/**
 * `npm run bench`: measures the built service against the least that could do the same work, side by side in one run, and
 * prints one table. Only the ratios mean anything elsewhere. BENCH_SMALL=1 runs a small one; BENCH_SEED sets the seed,
 * BENCH_TRACE_MOVEMENTS, BENCH_RECALL_MOVEMENTS and BENCH_VERIFY_MOVEMENTS the length of the ledgers; BENCH_ONLY names measures, such as `verdicts,starts`.
 */
import { benchAlertDeliveries } from './alert-deliveries.js';
import { readBenchSettings } from './bench-settings.js';
import { benchCompletions } from './completions.js';
import { median } from './median.js';
import { benchPlans } from './plans.js';
import { benchProjections } from './projections.js';
import { benchRecalls, wholeOf } from './recalls.js';
import type { Comparison } from './side-by-side.js';
import { benchSignInChecks, type SignInComparison } from './sign-in-checks.js';
import { benchStarts } from './starts.js';
import { benchTraces } from './traces.js';
import { benchVerdicts } from './verdicts.js';
import { benchVerifications } from './verifications.js';

interface Line {
  measure: string;
  service: string;
  yardstick: string;
  ratio: string;
  aim: string;
}

const settings = readBenchSettings(process.env);
const only = process.env.BENCH_ONLY?.split(',');
const whole = new Intl.NumberFormat('en', { maximumFractionDigits: 0 });

function spread(ratios: readonly number[]): string {
  return `${median(ratios).toFixed(2)} (${Math.min(...ratios).toFixed(2)} to ${Math.max(...ratios).toFixed(2)})`;
}

function compared(measure: string, comparison: Comparison): Line[] {
  const { servicePerSecond, barePerSecond, ratios, serviceMilliseconds, bareMilliseconds, statements } =
    comparison;
  const counts = [...new Set(Object.values(statements))].sort((one, other) => one - other).join(' or ');
  const lines: Line[] = [
    {
      measure: `${measure} per second`,
      service: whole.format(servicePerSecond),
      yardstick: `${whole.format(barePerSecond)} (Fastify and better-sqlite3, the same ${counts} statements)`,
      ratio: spread(ratios),
      aim: 'at least 0.50',
    },
  ];
  if (serviceMilliseconds !== null && bareMilliseconds !== null) {
    lines.push({
      measure: `processor time of a ${measure.replace(/s$/, '')}, ms`,
      service: serviceMilliseconds.toFixed(2),
      yardstick: bareMilliseconds.toFixed(2),
      ratio: (serviceMilliseconds / bareMilliseconds).toFixed(2),
      aim: '',
    });
  }
  return lines;
}

function withSignIn({ request, without, by }: SignInComparison): Line[] {
  return (['token', 'cookie'] as const).flatMap((way) => {
    const { perSecond, milliseconds, ratios } = by[way];
    const lines: Line[] = [
      {
        measure: `${request} per second, by ${way}`,
        service: whole.format(perSecond),
        yardstick: `${whole.format(without.perSecond)} (the service without the checks of signing in)`,
        ratio: spread(ratios),
        aim: 'at least 0.90',
      },
    ];
    if (milliseconds === null || without.milliseconds === null) return lines;
    const time = {
      measure: 'processor time of one, ms',
      service: milliseconds.toFixed(2),
      yardstick: without.milliseconds.toFixed(2),
      ratio: (milliseconds / without.milliseconds).toFixed(2),
      aim: '',
    };
    return [...lines, time];
  });
}

const measures: Record<string, () => Promise<Line[]>> = {
  verdicts: async () => compared('scan verdicts', await benchVerdicts(settings)),
  completions: async () => compared('completions', await benchCompletions(settings)),
  'sign-in': async () => (await benchSignInChecks(settings)).flatMap(withSignIn),
  traces: async () => {
    const { data, uses, serviceMilliseconds, rawMilliseconds, ratios } = await benchTraces(settings);
    process.stdout.write(
      `wrote ${whole.format(data.movements)} movements of ${data.lotIds.length} lots in ${whole.format(data.seconds)} s\n`,
    );
    return [
      {
        measure: `first page of a trace of 5 lots in ${whole.format(data.movements)} movements, ms`,
        service: serviceMilliseconds.toFixed(1),
        yardstick: `${rawMilliseconds.toFixed(1)} (better-sqlite3, SQL by hand; ${whole.format(uses)} uses)`,
        ratio: spread(ratios),
        aim: 'at most 1.50',
      },
    ];
  },
  recalls: async () => {
    const compared = await benchRecalls(settings);
    const { data, exposedClients, readingMilliseconds, openingMilliseconds, answerMilliseconds } = compared;
    const studios = data.studioIds.length;
    process.stdout.write(
      `wrote ${whole.format(data.movements)} movements, ${whole.format(data.sessions)} sessions and ${whole.format(data.lots)} lots of ${studios} studios in ${whole.format(data.seconds)} s\n`,
    );
    const part = (measure: string, milliseconds: number): Line => ({
      measure,
      service: whole.format(milliseconds),
      yardstick: '',
      ratio: '',
      aim: '',
    });
    return [
      {
        measure: `notice pasted to holds, exposures and balance in ${studios} studios, ms`,
        service: whole.format(wholeOf(compared)),
        yardstick: `${whole.format(compared.rawMilliseconds)} (better-sqlite3, SQL by hand; ${whole.format(exposedClients)} exposed clients)`,
        ratio: spread(compared.ratios),
        aim: 'under 2,000 ms',
      },
      part('of it: the notice read, with the lots it meets, ms', readingMilliseconds),
      part('of it: opened, and held in every studio, ms', openingMilliseconds),
      part('of it: exposures, containers and balance of every studio, ms', answerMilliseconds),
    ];
  },
  deliveries: async () => {
    const compared = await benchAlertDeliveries(settings);
    return compared.flatMap((each): Line[] => [
      {
        measure: `alerts to a webhook per second (${each.way})`,
        service: whole.format(each.servicePerSecond),
        yardstick: `${whole.format(each.barePerSecond)} (BullMQ alone, as many workers, the same HTTP call)`,
        ratio: spread(each.ratios),
        aim: '',
      },
      {
        measure: `one delivery from recorded to received, ms (${each.way})`,
        service: each.serviceMilliseconds.toFixed(1),
        yardstick: each.bareMilliseconds.toFixed(1),
        ratio: (each.serviceMilliseconds / each.bareMilliseconds).toFixed(2),
        aim: '',
      },
    ]);
  },
  verifications: async () => {
    const { movements, rows, commandSeconds, rawSeconds, ratios, mebibytes } =
      await benchVerifications(settings);
    return [
      {
        measure: `verify ${whole.format(movements)} movements (${whole.format(rows)} rows in all), s`,
        service: commandSeconds.toFixed(1),
        yardstick: `${rawSeconds.toFixed(1)} (better-sqlite3, every row read and hashed once)`,
        ratio: spread(ratios),
        aim: '',
      },
      {
        measure: 'most memory of that (RSS), MiB',
        service: mebibytes === null ? 'not told by this system' : whole.format(mebibytes),
        yardstick: '',
        ratio: '',
        aim: '',
      },
    ];
  },
  projections: async () => {
    const { wholePerSecond, againPerSecond, plainPerSecond, wholeRatios, againRatios, catalogue } =
      benchProjections(settings);
    const plain = `${whole.format(plainPerSecond)} (a plain loop over days and 8 lots on typed arrays)`;
    const { items, days, paths, drawSeconds, walkSeconds } = catalogue;
    const size = `${whole.format(items)} items, ${days} days, ${whole.format(paths)} paths`;
    return [
      {
        measure: 'simulated item-days per second, needs drawn and walked',
        service: whole.format(wholePerSecond),
        yardstick: plain,
        ratio: spread(wholeRatios),
        aim: '',
      },
      {
        measure: 'simulated item-days per second, each further candidate',
        service: whole.format(againPerSecond),
        yardstick: plain,
        ratio: spread(againRatios),
        aim: '',
      },
      {
        measure: `one policy for ${size}, s of processor`,
        service: (drawSeconds + walkSeconds).toFixed(1),
        yardstick: '',
        ratio: '',
        aim: 'at most 10 s',
      },
      {
        measure: 'of it: walked, without drawing, s of processor',
        service: walkSeconds.toFixed(1),
        yardstick: '',
        ratio: '',
        aim: '',
      },
    ];
  },
  plans: async () => {
    const { items, sessions, seconds, candidates, mebibytes, without, meanwhile } =
      await benchPlans(settings);
    const size = `${whole.format(items)} items, ${whole.format(sessions)} sessions, ${whole.format(candidates)} candidates`;
    const verdict = (measure: string, key: 'median' | 'slowest'): Line => ({
      measure,
      service: meanwhile[key].toFixed(1),
      yardstick: `${without[key].toFixed(1)} (while none is made)`,
      ratio: (meanwhile[key] / without[key]).toFixed(2),
      aim: '',
    });
    return [
      {
        measure: `a whole plan, ${size}, s`,
        service: seconds.toFixed(1),
        yardstick: '',
        ratio: '',
        aim: 'at most 180 s',
      },
      {
        measure: 'most memory of the service meanwhile (RSS), MiB',
        service: mebibytes === null ? 'not told by this system' : whole.format(mebibytes),
        yardstick: '',
        ratio: '',
        aim: '',
      },
      verdict('scan verdict while a plan is made, median, ms', 'median'),
      verdict('scan verdict while a plan is made, slowest, ms', 'slowest'),
    ];
  },
  starts: async () => {
    const { readyMilliseconds, idleMebibytes } = await benchStarts(settings);
    const line = (measure: string, service: string): Line => ({
      measure,
      service,
      yardstick: '',
      ratio: '',
      aim: '',
    });
    return [
      line('start to ready, ms', whole.format(readyMilliseconds)),
      line(
        'idle memory (RSS), MiB',
        idleMebibytes === null ? 'not told by this system' : whole.format(idleMebibytes),
      ),
    ];
  },
};

function table(lines: readonly Line[]): string {
  const head: Line = {
    measure: 'measure',
    service: 'Lotward',
    yardstick: 'yardstick',
    ratio: 'ratio (rounds)',
    aim: 'aim',
  };
  const columns = ['measure', 'service', 'yardstick', 'ratio', 'aim'] as const;
  const widths = columns.map((column) => Math.max(...[head, ...lines].map((line) => line[column].length)));
  return [head, ...lines]
    .map((line) =>
      columns
        .map((column, index) => line[column].padEnd(widths[index] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

process.stdout.write(
  `bench, seed ${settings.seed}${settings.small ? ', small' : ''}, Node ${process.version}\n`,
);
const lines: Line[] = [];
for (const [name, measure] of Object.entries(measures)) {
  if (only && !only.includes(name)) continue;
  process.stdout.write(`measuring ${name}\n`);
  lines.push(...(await measure()));
}
process.stdout.write(`\n${table(lines)}\n`);
