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
  /** Studios of the chain that answers a recall, their movements in all, and the lots each ever held. */
  recallStudios: number;
  recallMovements: number;
  recallLots: number;
  recallRounds: number;
  /** Alerts that one sweep opens, how often, and how many are then sent one at a time. */
  deliveries: number;
  deliveryRounds: number;
  singleDeliveries: number;
  /** As many workers in turn. */
  deliveryWorkers: readonly number[];
  starts: number;
  verifiedMovements: number;
  verifications: number;
}

const defaultSeed = 20_260_301;

export function readBenchSettings(environment: Record<string, string | undefined>): BenchSettings {
  const small = environment.BENCH_SMALL === '1';
  return {
    small,
    seed: wholeNumber(environment, 'BENCH_SEED') ?? defaultSeed,
    connections: 8,
    warmUpRounds: small ? 1 : 5,
    rounds: small ? 1 : 9,
    sessionsPerRound: small ? 2 : 60,
    traceMovements: wholeNumber(environment, 'BENCH_TRACE_MOVEMENTS') ?? (small ? 200_000 : 5_000_000),
    traceLots: 500,
    recallStudios: small ? 3 : 50,
    recallMovements: wholeNumber(environment, 'BENCH_RECALL_MOVEMENTS') ?? (small ? 30_000 : 5_000_000),
    recallLots: small ? 400 : 1_500,
    recallRounds: small ? 2 : 4,
    deliveries: small ? 60 : 2_000,
    deliveryRounds: small ? 1 : 5,
    // No webhook is tested oftener within an hour.
    singleDeliveries: small ? 3 : 10,
    deliveryWorkers: small ? [1] : [1, 4],
    starts: small ? 3 : 5,
    verifiedMovements: wholeNumber(environment, 'BENCH_VERIFY_MOVEMENTS') ?? (small ? 20_000 : 1_000_000),
    verifications: small ? 1 : 3,
  };
}

function wholeNumber(environment: Record<string, string | undefined>, name: string): number | undefined {
  const text = environment[name];
  if (text === undefined) return undefined;
  if (!/^\d{1,15}$/.test(text)) throw new Error(`${name} is "${text}": a whole number is expected.`);
  return Number(text);
}
