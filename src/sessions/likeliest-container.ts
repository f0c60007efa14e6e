/** A container of a lot as the record has it. Instants are ISO 8601 in UTC with milliseconds. */
export interface ContainerOfLot {
  containerId: string;
  lotId: string;
  receivedAt: string;
  /** Null: never opened, as with a box. */
  openedAt: string | null;
  /** When it was finished or discarded; null: it is here. */
  endedAt: string | null;
}

/**
 * The container of each lot that a use told afterwards is booked on, when only the lot is known: the one that was most
 * likely in hand at that instant. That is one that was open then, the latest opened first; else one that has ended since;
 * else one that is here and had been received by then, which was opened since before what is sealed to this day. What
 * arrived later cannot have been in hand, nor what had ended before.
 *
 * A container that was made for a record – it ended as it was received – tells of no time at all: it comes last.
 *
 * @param at ISO 8601 instant of the use
 * @returns container ids by lot id; a lot of which nothing can have been in hand is absent
 */
export function likeliestContainers(containers: readonly ContainerOfLot[], at: string): Map<string, string> {
  const ranked = containers.flatMap((container) => {
    const rank = rankAt(container, at);
    return rank === undefined ? [] : [{ ...container, rank }];
  });
  ranked.sort(
    (one, other) =>
      one.rank - other.rank ||
      compare(other.openedAt ?? '', one.openedAt ?? '') ||
      compare(one.receivedAt, other.receivedAt) ||
      compare(one.containerId, other.containerId),
  );
  const likeliest = new Map<string, string>();
  for (const { lotId, containerId } of ranked) {
    if (!likeliest.has(lotId)) likeliest.set(lotId, containerId);
  }
  return likeliest;
}

function rankAt({ receivedAt, openedAt, endedAt }: ContainerOfLot, at: string): number | undefined {
  if (endedAt !== null && endedAt === receivedAt) return 5;
  if (receivedAt > at || (endedAt !== null && endedAt < at)) return undefined;
  if (openedAt !== null && openedAt <= at) return 1;
  if (endedAt !== null) return 2;
  return openedAt === null ? 4 : 3;
}

function compare(one: string, other: string): number {
  return one < other ? -1 : Number(one > other);
}
