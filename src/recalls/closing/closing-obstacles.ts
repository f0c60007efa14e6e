import type { ClosingObstacle, RecallKind } from '../vocabulary.js';

/** How far the answer to a recall has come. Clients, containers and lots are counted; volumes are estimates. */
export interface ClosingFacts {
  /** Lots that the scope meets. */
  lots: { affected: number; notAffected: number; undecided: number };
  /** Clients whom a lot of the recall touched, certainly or possibly, by the latest attempt to tell them. */
  clients: {
    exposed: number;
    reached: number;
    refused: number;
    unreachable: number;
    /** Tried, but neither reached nor given up. */
    triedInVain: number;
    notTried: number;
    /** Erased before they were told: nobody knows any more who they were. */
    erased: number;
  };
  /** Containers that are to be found, by the latest look for them; what was disposed of, or used up since, is found. */
  containers: { toFind: number; found: number; notFound: number; notLookedFor: number };
  /** What is still here of affected lots; containers that were looked for in vain are not counted again. */
  remaining: { containers: number; pieces: number; microlitres: number };
  /** The mass balance of the lots and the blends made of them: what came in, and what of it is not accounted for. */
  balance: {
    lots: number;
    pieces: number;
    /** In containers that are not found. */
    missingPieces: number;
    /** For any other reason, such as a count that found fewer. */
    unexplainedPieces: number;
  };
}

export type CountedAs =
  | 'not tried'
  | 'tried in vain'
  | 'not found'
  | 'not looked for'
  | 'pieces'
  | 'microlitres';

/** Something that stands against closing. */
export interface Obstacle {
  obstacle: ClosingObstacle;
  /** So many lots, clients, containers or pieces … */
  count: number;
  /** … of so many. */
  of: number;
  /** The same by kind. */
  counts: { what: CountedAs; count: number }[];
}

/**
 * What stands against closing a recall, in the order in which it is best mended. In a drill nobody is told and nothing is
 * disposed of, so neither is asked for.
 */
export function obstaclesTo(kind: RecallKind, facts: ClosingFacts): Obstacle[] {
  const { lots, clients, containers, remaining, balance } = facts;
  const met = lots.affected + lots.notAffected + lots.undecided;
  const obstacles: Obstacle[] = [
    { obstacle: 'undecided lots', count: lots.undecided, of: met, counts: [] },
    {
      obstacle: 'clients not told',
      count: clients.notTried + clients.triedInVain,
      of: clients.exposed,
      counts: [
        { what: 'not tried', count: clients.notTried },
        { what: 'tried in vain', count: clients.triedInVain },
      ],
    },
    {
      obstacle: 'containers not found',
      count: containers.notFound + containers.notLookedFor,
      of: containers.toFind,
      counts: [
        { what: 'not looked for', count: containers.notLookedFor },
        { what: 'not found', count: containers.notFound },
      ],
    },
    {
      obstacle: 'stock without disposition',
      count: remaining.containers,
      of: containers.toFind,
      counts: [
        { what: 'pieces', count: remaining.pieces },
        { what: 'microlitres', count: remaining.microlitres },
      ],
    },
    { obstacle: 'pieces unexplained', count: balance.unexplainedPieces, of: balance.pieces, counts: [] },
  ];
  return obstacles.filter(
    ({ obstacle, count }) => count > 0 && (kind === 'recall' || !notInDrills.has(obstacle)),
  );
}

const notInDrills: ReadonlySet<ClosingObstacle> = new Set(['clients not told', 'stock without disposition']);

/** Obstacles for which no reason was given to close all the same. */
export function notOverridden(
  obstacles: readonly Obstacle[],
  overridden: readonly ClosingObstacle[],
): Obstacle[] {
  return obstacles.filter(({ obstacle }) => !overridden.includes(obstacle));
}

/** Pieces that are accounted for, of all that came in. */
export function explainedPieces({ balance }: Pick<ClosingFacts, 'balance'>): number {
  return Math.max(0, balance.pieces - balance.missingPieces - balance.unexplainedPieces);
}

/** One obstacle as a sentence. */
export function obstacleWords({ obstacle, count, of, counts }: Obstacle): string {
  const amount = (what: CountedAs) => counts.find((each) => each.what === what)?.count ?? 0;
  switch (obstacle) {
    case 'undecided lots':
      return `${count} of ${of} lots may be meant, and nobody has decided yet.`;
    case 'clients not told':
      return `${count} of ${of} exposed clients were not told: ${amount('not tried')} not tried yet, ${amount('tried in vain')} tried in vain.`;
    case 'containers not found':
      return `${count} of ${of} containers are not found: ${amount('not looked for')} not looked for yet, ${amount('not found')} looked for in vain.`;
    case 'stock without disposition':
      return `${count} containers with ${amount('pieces')} pieces are still here and neither returned nor destroyed.`;
    case 'pieces unexplained':
      return `${count} of ${of} pieces are not accounted for.`;
  }
}
