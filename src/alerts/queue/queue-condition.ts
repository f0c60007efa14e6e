/** What is seen of the queue at one moment. */
export interface QueueFacts {
  /** ISO 8601 instant since when Redis is not reached; null: it is reached, or there is none. */
  awaySince: string | null;
  /** ISO 8601 instant since when no worker is seen; null: one is seen, or none is needed. */
  withoutWorkersSince: string | null;
  /** How many deliveries of the studio are overdue, and when the first was due, ISO 8601 instant. */
  overdue: { count: number; since: string } | null;
}

export interface QueueCondition {
  cause: 'Redis is not reached' | 'no worker is seen' | 'deliveries are late';
  /** ISO 8601 instant. */
  since: string;
  whatToDo: string;
}

/** How long Redis or all workers may be away before somebody is told. */
const patienceMilliseconds = 120_000;
/** How late a delivery may be before somebody is told. */
export const overdueMilliseconds = 600_000;

const advice: Record<QueueCondition['cause'], string> = {
  'Redis is not reached':
    'Start Redis again, or look at REDIS_URL. Nothing is lost: what is to be delivered goes out by itself then.',
  'no worker is seen':
    'Start a worker (npm run worker) with the same DATABASE_URL and REDIS_URL. What waits goes out by itself then.',
  'deliveries are late':
    'Look at the log of the service and its workers. What waits goes out by itself as soon as it can.',
};

/**
 * What is wrong with the queue, the cause before what comes of it; null: nothing that somebody has to be told.
 * @param now ISO 8601 instant
 */
export function queueCondition(facts: QueueFacts, now: string): QueueCondition | null {
  const isOld = (since: string | null): since is string =>
    since !== null && Date.parse(now) - Date.parse(since) >= patienceMilliseconds;
  if (isOld(facts.awaySince)) return condition('Redis is not reached', facts.awaySince);
  if (isOld(facts.withoutWorkersSince)) return condition('no worker is seen', facts.withoutWorkersSince);
  if (facts.overdue !== null && facts.overdue.count > 0) {
    return condition('deliveries are late', facts.overdue.since);
  }
  return null;
}

function condition(cause: QueueCondition['cause'], since: string): QueueCondition {
  return { cause, since, whatToDo: advice[cause] };
}

/** The alert that stands of it. */
export interface ToldCondition {
  cause: unknown;
  /** Somebody closed it while it stood: nothing more is told of it until it has ended. */
  isClosed: boolean;
}

/** Whether there is anything to write: it begins, has another cause, or ends. */
export function isNews(condition: QueueCondition | null, told: ToldCondition | undefined): boolean {
  if (condition === null) return told !== undefined;
  return told === undefined || (!told.isClosed && told.cause !== condition.cause);
}
