import { productLabel } from '../catalogue/product-label.js';
import { containerCandidate } from '../stock/container-candidate.js';
import type { ContainerCandidate } from '../stock/first-expired.js';
import type { ContainerLifeFacts } from '../stock/opened-life.js';
import { containerLife } from '../stock/stock-on-hand.js';

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

/** A container as stock has it on record. */
export interface RecordedContainer {
  containerId: string;
  lotId: string;
  productId: string;
  form: 'bottle' | 'box';
  labelCode: string;
  state: TrayThing['state'];
  ownerId: string | null;
  openedAt: string | null;
  receivedAt: string;
  pieces: number;
  code: string | null;
  useBy: string | null;
  kind: 'pigment' | 'cartridge' | 'consumable';
  makerName: string;
  productName: string;
  shade: string | null;
  stockForm: TrayThing['stockForm'];
  openedLife: string | null;
  usableThrough: string | null;
  holds: readonly HoldFact[];
}

export type TrayCandidate = ContainerCandidate & { thing: TrayThing };

/** A container as the tray's rules see it, with what of it lies on trays. */
export function trayThing(
  container: RecordedContainer,
  assumedOpenedLife: string | null,
  linesOnTrays: readonly { containerId: string; pieces: number }[],
): TrayThing {
  const { containerId, lotId, productId, labelCode, stockForm, state, receivedAt } = container;
  const { ownerId, pieces, holds } = container;
  return {
    ...{ containerId, lotId, productId, labelCode, stockForm, state, receivedAt, ownerId, pieces, holds },
    ...containerLife(container, assumedOpenedLife),
    label: productLabel(container),
    lotCode: container.code,
    isPigment: container.kind === 'pigment',
    reservedPieces: linesOnTrays
      .filter((line) => line.containerId === containerId)
      .reduce((sum, line) => sum + line.pieces, 0),
  };
}

/** Pieces that no tray holds yet; a container is shared, so lying on a tray takes nothing from it. */
export function availablePieces(thing: TrayThing): number {
  return thing.pieces - (thing.stockForm === 'pieces' ? thing.reservedPieces : 0);
}

/** A thing in the form in which first-expired-first-out orders it. */
export function asCandidate(thing: TrayThing): TrayCandidate {
  const { container: _, ...candidate } = containerCandidate(
    {
      ...thing,
      form: thing.stockForm === 'pieces' ? 'box' : 'bottle',
      useBy: thing.useByLastDay,
      pieces: availablePieces(thing),
    },
    thing.assumedOpenedLife,
    // Receipt only breaks ties, so the day in UTC will do.
    'UTC',
  );
  return { ...candidate, thing };
}

/** The thing in words: `Halden Ink Umber, lot A12`. */
export function describeThing(thing: TrayThing): string {
  return `${thing.label}, ${thing.lotCode === null ? 'no lot code' : `lot ${thing.lotCode}`}`;
}
