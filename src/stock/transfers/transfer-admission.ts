import { hasEnded } from '../container-transitions.js';
import { refusalToTake } from '../laid-out-pieces.js';
import { isPast, type ShelfLifeStatus } from '../shelf-life.js';

/** A container that is to be sent, or of which pieces are. */
export interface GoodsToSend {
  form: 'bottle' | 'box';
  state: 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';
  lifeStatus: ShelfLifeStatus;
  /** Kinds of the open holds on it and its lot. */
  holdKinds: readonly ('quarantine' | 'recall' | 'compliance')[];
  /** Poured by the studio: its lot has parents here. */
  isBlend: boolean;
  /** By the book. */
  pieces: number;
  /** Lines of trays on which it lies, and pieces of it that they hold. */
  onTrays: { lines: number; pieces: number };
}

/**
 * Why goods may not go to another studio, and what to do instead; null when they may. What nobody may use is not passed
 * on: it is released, sent back or discarded where it was put aside, so that it cannot be lost sight of on the way.
 * Practice stock may be expired. A house blend stays where its parents are recorded, for a hold on one of those reaches
 * it only there.
 *
 * @param pieces of a box; a bottle is sent whole
 */
export function refusalToSend(goods: GoodsToSend, pieces: number): string | null {
  const { form, state, lifeStatus, holdKinds, isBlend, onTrays } = goods;
  if (hasEnded(state)) {
    return `This ${form} is recorded as ${state}. If it is still here, reverse the movement that ended it, or call back the transfer it went with.`;
  }
  if (isBlend) {
    return 'This is a house blend. Its parents are recorded in this studio only, so it stays here; send the pigments, and blend them there.';
  }
  if (holdKinds.includes('recall')) {
    return 'This is recalled. Leave it set aside here, send it back to the supplier or discard it.';
  }
  if (holdKinds.length > 0) {
    return 'This is on hold. Release the hold first; what may not be used is sent back to the supplier or discarded here.';
  }
  if (isPast(lifeStatus) && state !== 'practice only') {
    return `This is ${lifeStatus === 'expired' ? 'past its use-by date' : 'open too long'}. Discard it here, or keep it for practice and send it as that.`;
  }
  if (goods.pieces === 0) return `By the book nothing is left in this ${form}. Count it first.`;
  if (form === 'box') return refusalToTake({ booked: goods.pieces, onTrays: onTrays.pieces }, pieces);
  if (onTrays.lines > 0) return 'This bottle lies on a tray. Take it off the tray first.';
  return null;
}
