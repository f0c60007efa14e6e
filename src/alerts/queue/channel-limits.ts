/** How much of one channel is done at once, and in a second. */
export interface ChannelLimits {
  /** How many are sent at the same time by one process. */
  atOnce: number;
  /** Null: as many as it can. */
  perSecond: number | null;
  /** How many jobs wait at most; what is beyond waits in the outbox. */
  waiting: number;
}

/** @param perSecond how many deliveries a channel that goes out may make in a second */
export function channelLimits(perSecond: number): Record<'log' | 'mail' | 'webhook' | 'push', ChannelLimits> {
  return {
    // It goes to the log of this very machine. Many at once, since their rows are written together.
    log: { atOnce: 50, perSecond: null, waiting: 1_000 },
    // One server takes all of it, and dislikes many connections at once.
    mail: { atOnce: 4, perSecond, waiting: 1_000 },
    // Many more than the relay brings of one receiver, so that one that is slow never takes all.
    webhook: { atOnce: 50, perSecond, waiting: 1_000 },
    push: { atOnce: 50, perSecond, waiting: 1_000 },
  };
}
