import { localDay } from '../identity/local-day.js';
import type { ContainerCandidate } from '../stock/first-expired.js';
import type { ContainerLifeFacts } from '../stock/opened-life.js';

export interface HoldFact {
  kind: 'quarantine' | 'recall' | 'compliance';
  reason: string;
  on: 'container' | 'lot' | 'parent lot';
}

/** One container that could be on a tray: a bottle, or a box of pieces. */
export interface TrayThing extends ContainerLifeFacts {
  containerId: string;
  lotId: string;
  productId: string;
  /** How a person calls it: maker, product, shade. */
  label: string;
  labelCode: string;
  lotCode: string | null;
  /** Pieces are used once each; a container is shared by many sessions. */
  stockForm: 'container' | 'pieces';
  isPigment: boolean;
  state: 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';
  receivedAt: string;
  ownerId: string | null;
  /** Pieces by the book. */
  pieces: number;
  /** Pieces of it that lie on trays. */
  reservedPieces: number;
  holds: readonly HoldFact[];
}

export type TrayCandidate = ContainerCandidate & { thing: TrayThing };

/** Pieces that no tray holds yet; a container is shared, so lying on a tray takes nothing from it. */
export function availablePieces(thing: TrayThing): number {
  return thing.pieces - (thing.stockForm === 'pieces' ? thing.reservedPieces : 0);
}

/** A thing in the form in which first-expired-first-out orders it. */
export function asCandidate(thing: TrayThing): TrayCandidate {
  return {
    thing,
    id: thing.containerId,
    useByLastDay: thing.useByLastDay,
    openedAt: thing.openedAt,
    openedLife: thing.openedLife,
    assumedOpenedLife: thing.assumedOpenedLife,
    // Receipt only breaks ties, so the day in UTC will do.
    receivedOn: localDay(thing.receivedAt, 'UTC'),
    held: thing.holds.length > 0,
    practice: thing.state === 'practice only',
    finished: thing.state === 'finished' || thing.state === 'discarded' || availablePieces(thing) <= 0,
  };
}

/** The thing in words: `Halden Ink Umber, lot A12`. */
export function describeThing(thing: TrayThing): string {
  return `${thing.label}, ${thing.lotCode === null ? 'no lot code' : `lot ${thing.lotCode}`}`;
}
