import { localDay } from '../../identity/local-day.js';
import { instantsOfDays } from '../../sessions/day-range.js';

/** When a container of a recalled lot could be taken in hand. */
export interface ContainerAtHand {
  lotId: string;
  productId: string;
  /** False: it is not decided whether the lot is affected. */
  affected: boolean;
  /** Instant from which it could be taken: a bottle since it was opened, a box since it came. ISO 8601. */
  since: string;
  /** Instant at which the last of it was gone; null: it is still there. */
  until: string | null;
}

/** A time, from the first instant up to but without the second, in which a lot of a product was at hand. */
export interface TimeAtHand {
  lotId: string;
  productId: string;
  affected: boolean;
  from: string;
  before: string;
}

const endOfDays = '9999-12-31';

/**
 * The whole local days on which lots were at hand: the day it was opened and the day it was finished count. Times of one
 * lot that overlap or follow each other are one.
 *
 * @param timeZone IANA time zone of the studio
 */
export function daysAtHand(containers: readonly ContainerAtHand[], timeZone: string): TimeAtHand[] {
  const times = containers.flatMap(({ lotId, productId, affected, since, until }) => {
    const range = instantsOfDays(
      localDay(since, timeZone),
      until === null ? endOfDays : localDay(until, timeZone),
      timeZone,
    );
    // Ended before it was opened: a slip in the record that tells nothing of any day.
    return range === null ? [] : [{ lotId, productId, affected, ...range }];
  });
  return merged(times, ({ lotId }) => lotId);
}

/** The times in which any lot of a product was at hand, without overlaps, so that each use is found once. */
export function timesOfProducts(
  times: readonly TimeAtHand[],
): Pick<TimeAtHand, 'productId' | 'from' | 'before'>[] {
  return merged(times, ({ productId }) => productId).map(({ productId, from, before }) => ({
    productId,
    from,
    before,
  }));
}

function merged(times: readonly TimeAtHand[], groupOf: (time: TimeAtHand) => string): TimeAtHand[] {
  const groups = new Map<string, TimeAtHand[]>();
  const inOrder = [...times].sort((one, other) =>
    one.from < other.from ? -1 : one.from > other.from ? 1 : 0,
  );
  for (const time of inOrder) {
    const group = groups.get(groupOf(time)) ?? [];
    const last = group.at(-1);
    if (last && time.from <= last.before) {
      if (time.before > last.before) last.before = time.before;
    } else group.push({ ...time });
    groups.set(groupOf(time), group);
  }
  return [...groups.values()].flat();
}
