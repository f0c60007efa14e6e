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
 * How much of a lot came from each of its ancestors, at any depth.
 *
 * @param edges every pouring into the lot and into what it was made of; others may be among them
 * @returns shares by lot id, the lot itself with 1
 */
export function sharesInto(lotId: string, edges: readonly BlendEdge[]): Map<string, number> {
  const pouredInto = new Map<string, BlendEdge[]>();
  for (const edge of edges) pouredInto.set(edge.lotId, [...(pouredInto.get(edge.lotId) ?? []), edge]);

  // Each lot is passed once, after all that was made of it, so that ten blends of blends cost ten steps and not the number
  // of ways through them.
  const waiting = new Map<string, number>();
  const reached = [lotId];
  const known = new Set(reached);
  for (let index = 0; index < reached.length; index += 1) {
    for (const edge of pouredInto.get(reached[index] ?? '') ?? []) {
      waiting.set(edge.parentLotId, (waiting.get(edge.parentLotId) ?? 0) + 1);
      if (known.has(edge.parentLotId)) continue;
      known.add(edge.parentLotId);
      reached.push(edge.parentLotId);
    }
  }

  const shares = new Map([[lotId, 1]]);
  const ready = [lotId];
  for (let passed = ready.pop(); passed !== undefined; passed = ready.pop()) {
    const share = shares.get(passed) ?? 0;
    for (const edge of pouredInto.get(passed) ?? []) {
      const next = edge.parentLotId;
      const part = share * (edge.parentMicrolitres / edge.producedMicrolitres);
      shares.set(next, (shares.get(next) ?? 0) + part);
      const left = (waiting.get(next) ?? 0) - 1;
      waiting.set(next, left);
      if (left === 0) ready.push(next);
    }
  }
  return shares;
}

/** A derived share of an amount; three significant digits, for it is an estimate of an estimate. */
export function shareOf(quantityMicrolitres: number, share: number): number {
  return Number((quantityMicrolitres * share).toPrecision(3));
}
