/** Uniform numbers from 0 to 1 by a seed; mulberry32, good enough for made examples. */
export function uniform(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

type Random = () => number;
type MakeSeries = (random: Random, periods: number) => number[];

const normal = (random: Random) => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

function poisson(random: Random, mean: number): number {
  let chance = Math.exp(-mean);
  let sum = chance;
  let count = 0;
  for (const luck = random(); luck > sum && count < 500; sum += chance) chance *= mean / ++count;
  return count;
}

/** Marsaglia & Tsang 2000, of mean 1. */
function gamma(random: Random, shape: number): number {
  if (shape < 1) return (gamma(random, shape + 1) * random() ** (1 / shape) * (shape + 1)) / shape;
  const d = shape - 1 / 3;
  for (;;) {
    const x = normal(random);
    const v = (1 + x / Math.sqrt(9 * d)) ** 3;
    if (v > 0 && Math.log(1 - random()) < x * x * 0.5 + d - d * v + d * Math.log(v)) return (d * v) / shape;
  }
}

const uneven = (random: Random, mean: number, shape: number) => poisson(random, mean * gamma(random, shape));
const periodsOf = (periods: number, count: (period: number) => number) =>
  Array.from({ length: periods }, (_, period) => count(period));

/** Ways demand comes that no forecasting method is made for in particular. */
export const madeSeries: Record<string, MakeSeries> = {
  steady: (random, periods) => {
    const mean = Math.exp(-1 + 0.8 * normal(random));
    return periodsOf(periods, () => poisson(random, mean));
  },
  uneven: (random, periods) => {
    const mean = Math.exp(-0.5 + normal(random));
    const shape = 0.3 + 2 * random();
    return periodsOf(periods, () => uneven(random, mean, shape));
  },
  ending: (random, periods) => {
    const mean = Math.exp(-0.2 + 0.9 * normal(random));
    const last = periods * (0.2 + 0.8 * random());
    return periodsOf(periods, (period) =>
      uneven(random, mean * Math.exp(-Math.max(0, period - last) / 4), 2),
    );
  },
  seasonal: (random, periods) => {
    const mean = Math.exp(-0.2 + normal(random));
    const swing = 0.3 + 0.7 * random();
    const phase = 6.28 * random();
    return periodsOf(periods, (period) =>
      uneven(random, mean * (1 + swing * Math.sin(phase + period / 1.91)), 3),
    );
  },
  wandering: (random, periods) => {
    let mean = Math.exp(-0.6 + 0.9 * normal(random));
    const step = 0.05 + 0.25 * random();
    return periodsOf(periods, () => {
      mean = Math.min(30, mean * Math.exp(step * normal(random)));
      return uneven(random, mean, 2);
    });
  },
  'once at most': (random, periods) => {
    const chance = 0.03 + 0.5 * random() ** 2;
    return periodsOf(periods, () => (random() < chance ? 1 : 0));
  },
  'heavy sizes': (random, periods) => {
    const chance = 0.08 + 0.4 * random();
    const power = -1 / (1.3 + 1.2 * random());
    return periodsOf(periods, () =>
      random() < chance ? Math.min(200, Math.ceil((1 - random()) ** power)) : 0,
    );
  },
  'in lots': (random, periods) => {
    const size = 2 + Math.floor(5 * random());
    const mean = Math.exp(-1.2 + 0.7 * normal(random));
    return periodsOf(periods, () => size * poisson(random, mean));
  },
  fast: (random, periods) => {
    const mean = 4 + 16 * random();
    return periodsOf(periods, () => uneven(random, mean, 8));
  },
  bursts: (random, periods) => {
    const begins = 0.03 + 0.1 * random();
    let on = false;
    return periodsOf(periods, () => {
      on = on ? random() > 0.35 : random() < begins;
      return poisson(random, on ? 3 : 0.05);
    });
  },
};
