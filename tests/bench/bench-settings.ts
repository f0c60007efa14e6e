/** How large the bench is: by default as measured, small where it only has to be seen to run. */
export interface BenchSettings {
  small: boolean;
  seed: number;
  /** Parallel keep-alive connections; each is one artist's tablet. */
  connections: number;
  /** Rounds that are not counted, so that both sides run compiled code. */
  warmUpRounds: number;
  rounds: number;
  sessionsPerRound: number;
  traceMovements: number;
  traceLots: number;
  starts: number;
}

const defaultSeed = 20_260_301;

export function readBenchSettings(environment: Record<string, string | undefined>): BenchSettings {
  const small = environment.BENCH_SMALL === '1';
  const seed = Number(environment.BENCH_SEED ?? defaultSeed);
  if (!Number.isSafeInteger(seed))
    throw new Error(`BENCH_SEED is "${environment.BENCH_SEED}": a whole number is expected.`);
  return {
    small,
    seed,
    connections: 8,
    warmUpRounds: small ? 1 : 5,
    rounds: small ? 3 : 9,
    sessionsPerRound: small ? 10 : 60,
    traceMovements: small ? 200_000 : 5_000_000,
    traceLots: 500,
    starts: small ? 3 : 5,
  };
}
