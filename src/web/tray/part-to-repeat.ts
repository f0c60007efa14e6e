import type { PigmentAtTouchUpView } from '../../sessions/touch-up.views.js';
import type { LaidThing } from './laid-things.js';

/** Why the bottle of the earlier visit may not be used today. */
export type NoLonger = PigmentAtTouchUpView['whyNot'][number]['obstacle'];

export interface PartToRepeat {
  part: PigmentAtTouchUpView;
  /** Null: the bottle of then could be used today. */
  noLonger: NoLonger | null;
  /** What lies on the tray to take it from; null: nothing yet. */
  from: LaidThing | null;
  /** How that differs from what was used then. */
  isOther: 'bottle' | 'lot' | null;
}

const asItStands: ReadonlySet<NoLonger> = new Set(['held', 'finished', 'practice only']);

/**
 * A part of the earlier visit's mix as it can be repeated today: from the bottle of then, else from another one of its
 * lot, else from another lot of the same product, whichever lies on the tray and may be used. The service judges its dates
 * for the days of the touch-up window; today is a day of its own.
 *
 * @param today local day of the studio, YYYY-MM-DD
 */
export function partToRepeat(
  part: PigmentAtTouchUpView,
  onTray: readonly LaidThing[],
  today: string,
): PartToRepeat {
  const usable = onTray.filter(({ refusedNow }) => refusedNow.length === 0);
  const same = usable.find(({ containerId }) => containerId === part.containerId);
  const ofLot = usable.find(({ lotId }) => lotId === part.lotId);
  const ofProduct = usable.find(({ productId }) => productId === part.productId);
  return {
    part,
    noLonger: noLonger(part, today),
    from: same ?? ofLot ?? ofProduct ?? null,
    isOther: same ? null : ofLot ? 'bottle' : ofProduct ? 'lot' : null,
  };
}

function noLonger({ whyNot, lastDay }: PigmentAtTouchUpView, today: string): NoLonger | null {
  const standing = whyNot.find(({ obstacle }) => asItStands.has(obstacle));
  if (standing) return standing.obstacle;
  if (lastDay === null || lastDay >= today) return null;
  return whyNot.find(({ obstacle }) => !asItStands.has(obstacle))?.obstacle ?? 'expired';
}
