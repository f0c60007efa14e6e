import { type ContainerCandidate, orderFirstExpired } from '../../stock/first-expired.js';

/** A container that kit lists may be served from. `held` tells of holds other than those of the recall. */
export interface KitSource extends ContainerCandidate {
  productId: string;
  /** The artist whose it is; null: the studio's, for everybody. */
  ownerId: string | null;
  /** Whether pieces are used up; a bottle is shared by many sessions. */
  countedInPieces: boolean;
  /** Pieces that lie on no tray; a bottle is one. */
  pieces: number;
  /** Whether a lot of the recall is in it. */
  recalled: boolean;
}

/** One line of the kit list of a session to come. */
export interface KitLineToCome {
  sessionId: string;
  artistId: string;
  /** ISO 8601 instant by which dates are judged. */
  at: string;
  /** Products that serve the line: the one named, or all of the configuration. */
  productIds: readonly string[];
  quantityPieces: number;
}

/** A line that would have been served by a recalled lot. */
export interface KitLineAtRisk<Line extends KitLineToCome, Source extends KitSource> {
  line: Line;
  /** What first expired, first out would have taken of the recall. */
  recalled: Source[];
  /** Whether what else is in date is enough. */
  enoughElse: boolean;
  /** What else is in date, the one to take first at the front, with the pieces that are left for this line. */
  elseInDate: { source: Source; pieces: number }[];
}

/**
 * Which sessions to come would have used a recalled lot, as if nothing of the recall were held, and whether they can do
 * without: what else there is serves the earlier sessions first.
 *
 * @param lines in the order in which they are served
 * @param timeZone IANA time zone of the studio
 */
export function takenByKits<Line extends KitLineToCome, Source extends KitSource>(
  lines: readonly Line[],
  sources: readonly Source[],
  timeZone: string,
): KitLineAtRisk<Line, Source>[] {
  const asPlanned = new Shelf(sources, timeZone);
  const withoutRecalled = new Shelf(
    sources.filter(({ recalled }) => !recalled),
    timeZone,
  );
  return lines.flatMap((line) => {
    const taken = asPlanned.take(line);
    const elseInDate = withoutRecalled.offered(line);
    const instead = withoutRecalled.take(line);
    const recalled = taken.sources.filter((source) => source.recalled);
    if (recalled.length === 0) return [];
    return [{ line, recalled, enoughElse: instead.pieces >= line.quantityPieces, elseInDate }];
  });
}

class Shelf<Source extends KitSource> {
  private readonly left: Map<string, number>;

  constructor(
    private readonly sources: readonly Source[],
    private readonly timeZone: string,
  ) {
    this.left = new Map(sources.map(({ id, pieces }) => [id, pieces]));
  }

  /** What may be taken for a line, in order. */
  offered({ productIds, artistId, at }: KitLineToCome): { source: Source; pieces: number }[] {
    const fitting = this.sources.filter(
      (source) =>
        productIds.includes(source.productId) &&
        (source.ownerId === null || source.ownerId === artistId) &&
        this.piecesLeft(source) > 0,
    );
    return orderFirstExpired(fitting, at, this.timeZone).order.map((source) => ({
      source,
      pieces: this.piecesLeft(source),
    }));
  }

  take(line: KitLineToCome): { sources: Source[]; pieces: number } {
    const sources: Source[] = [];
    let pieces = 0;
    for (const { source, pieces: there } of this.offered(line)) {
      if (pieces >= line.quantityPieces) break;
      const taken = Math.min(there, line.quantityPieces - pieces);
      pieces += taken;
      sources.push(source);
      if (source.countedInPieces) this.left.set(source.id, there - taken);
    }
    return { sources, pieces };
  }

  private piecesLeft({ id }: Source): number {
    return this.left.get(id) ?? 0;
  }
}
