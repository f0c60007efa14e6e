import { judgeShelfLife } from '../stock/shelf-life.js';
import { availablePieces, type TrayThing } from './tray-thing.js';

/** What is shown of a thing that was scanned or offered. */
export type ShownThing = Pick<
  TrayThing,
  'containerId' | 'lotId' | 'productId' | 'label' | 'labelCode' | 'lotCode' | 'state'
> & {
  /** Last day on which it may be used; null when no date is known. */
  lastDay: string | null;
  openedLifeFrom: 'label' | 'assumed' | 'sending studio' | 'none';
  /** Pieces by the book that no tray holds. */
  availablePieces: number;
};

/** @param at ISO 8601 instant; @param timeZone IANA time zone of the studio */
export function shownThing(thing: TrayThing, at: string, timeZone: string): ShownThing {
  const { containerId, lotId, productId, label, labelCode, lotCode, state } = thing;
  const { lastDay, openedLifeFrom } = judgeShelfLife(thing, at, timeZone);
  return {
    ...{ containerId, lotId, productId, label, labelCode, lotCode, state },
    lastDay,
    openedLifeFrom,
    availablePieces: availablePieces(thing),
  };
}
