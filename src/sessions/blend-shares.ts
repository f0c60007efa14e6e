/** What one lot gave to one house blend, whole microlitres. */
export interface BlendEdge {
  /** The lot of the blend. */
  lotId: string;
  parentLotId: string;
  /** Poured from the parent into this blend. */
  parentMicrolitres: number;
  /** The whole blend as it was made. */
  producedMicrolitres: number;
}

/**
 * How much of each blend came from a lot, through any number of blends in between: 0.25 is a quarter of every drop.
 * Where it came in by several ways, they add up.
 *
 * @param edges every pouring from the lot and from what was made of it; others may be among them
 * @returns shares by lot id, the lot itself with 1; a lot that has nothing of it is absent
 */
export function sharesFrom(lotId: string, edges: readonly BlendEdge[]): Map<string, number> {
  return spread(lotId, edges, 'downwards');
}

/**
 * How much of a lot came from each of its ancestors, at any depth.
 *
 * @param edges every pouring into the lot and into what it was made of; others may be among them
 * @returns shares by lot id, the lot itself with 1
 */
export function sharesInto(lotId: string, edges: readonly BlendEdge[]): Map<string, number> {
  return spread(lotId, edges, 'upwards');
}

/** A derived share of an amount; three significant digits, for it is an estimate of an estimate. */
export function shareOf(quantityMicrolitres: number, share: number): number {
  return Number((quantityMicrolitres * share).toPrecision(3));
}

function spread(
  start: string,
  edges: readonly BlendEdge[],
  direction: 'downwards' | 'upwards',
): Map<string, number> {
  const from = (edge: BlendEdge) => (direction === 'downwards' ? edge.parentLotId : edge.lotId);
  const to = (edge: BlendEdge) => (direction === 'downwards' ? edge.lotId : edge.parentLotId);
  const outgoing = new Map<string, BlendEdge[]>();
  for (const edge of edges) outgoing.set(from(edge), [...(outgoing.get(from(edge)) ?? []), edge]);

  // Each lot is passed once, after all that leads to it, so that ten blends of blends cost ten steps and not the number
  // of ways through them.
  const waiting = new Map<string, number>();
  const reached = [start];
  const known = new Set(reached);
  for (let index = 0; index < reached.length; index += 1) {
    for (const edge of outgoing.get(reached[index] ?? '') ?? []) {
      waiting.set(to(edge), (waiting.get(to(edge)) ?? 0) + 1);
      if (known.has(to(edge))) continue;
      known.add(to(edge));
      reached.push(to(edge));
    }
  }

  const shares = new Map([[start, 1]]);
  const ready = [start];
  for (let lotId = ready.pop(); lotId !== undefined; lotId = ready.pop()) {
    const share = shares.get(lotId) ?? 0;
    for (const edge of outgoing.get(lotId) ?? []) {
      const next = to(edge);
      const part = share * (edge.parentMicrolitres / edge.producedMicrolitres);
      shares.set(next, (shares.get(next) ?? 0) + part);
      const left = (waiting.get(next) ?? 0) - 1;
      waiting.set(next, left);
      if (left === 0) ready.push(next);
    }
  }
  return shares;
}
