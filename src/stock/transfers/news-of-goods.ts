export type HoldKind = 'quarantine' | 'recall' | 'compliance';

/** A hold that stands where goods came from. */
export interface HoldElsewhere {
  kind: HoldKind;
  reason: string;
  /** On the lot there, or only on the container they were in. */
  on: 'container' | 'lot';
}

/** Goods that came from another studio, with the holds that stand there by now. */
export interface GoodsFromElsewhere {
  lotId: string;
  containerId: string;
  heldThere: readonly HoldElsewhere[];
}

/** Lots and containers here on which any hold is open. */
export interface HeldHere {
  lotIds: ReadonlySet<string>;
  containerIds: ReadonlySet<string>;
}

export interface LotHeldElsewhere {
  lotId: string;
  severity: 'urgent' | 'warning';
  /** Each once, a recall first. */
  holdKinds: HoldKind[];
  reasons: string[];
}

const worstFirst: readonly HoldKind[] = ['recall', 'compliance', 'quarantine'];

/**
 * The lots here of which goods are on hold where they came from and not here. Also when nothing of them is left: who was
 * touched with them has to be found all the same. A hold here on the lot answers it, or for a single container's hold one
 * on what came of it.
 */
export function lotsHeldElsewhere(goods: readonly GoodsFromElsewhere[], held: HeldHere): LotHeldElsewhere[] {
  const found = new Map<string, LotHeldElsewhere>();
  for (const { lotId, containerId, heldThere } of goods) {
    if (held.lotIds.has(lotId)) continue;
    for (const hold of heldThere) {
      if (hold.on === 'container' && held.containerIds.has(containerId)) continue;
      const lot = found.get(lotId) ?? { lotId, severity: 'warning', holdKinds: [], reasons: [] };
      found.set(lotId, lot);
      if (hold.kind === 'recall') lot.severity = 'urgent';
      if (!lot.holdKinds.includes(hold.kind)) lot.holdKinds.push(hold.kind);
      if (!lot.reasons.includes(hold.reason)) lot.reasons.push(hold.reason);
    }
  }
  for (const lot of found.values()) {
    lot.holdKinds.sort((one, other) => worstFirst.indexOf(one) - worstFirst.indexOf(other));
    lot.reasons.sort();
  }
  return [...found.values()];
}
