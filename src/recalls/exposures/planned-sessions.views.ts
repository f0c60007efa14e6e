import type { BodyPlace, VisitKind } from '../../sessions/vocabulary.js';
import type { Certainty } from './exposure-certainty.js';

/** By what a session to come would use a lot of the recall. */
export type PlannedReason = 'on the tray' | 'follows an exposed session' | 'kit list';

/** A lot of the recall, or a house blend made of one. */
export class PlannedLotView {
  lotId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  lotCode: string | null;
  useBy: string | null;
  standing: 'affected' | 'undecided';
}

/** What lies on the tray or is in a cup already. Whether it has touched the client is told at completion. */
export class OnTrayView {
  /** Null: it was taken off the tray again, while drops of it are in a cup. */
  trayLineId: string | null;
  containerId: string;
  lot: PlannedLotView;
  /** Whether drops of it are in a cup. */
  inMix: boolean;
}

/** The earlier session whose mix would be repeated. */
export class FollowedExposureView {
  sessionId: string;
  /** The studio's local day, YYYY-MM-DD. */
  day: string;
  certainty: Certainty;
}

/** What else may be used on that day, the one to take first at the front. */
export class ElseInDateView {
  containerId: string;
  labelCode: string;
  lotId: string;
  lotCode: string | null;
  productId: string;
  /** Maker, product and shade. */
  label: string;
  /** Last usable day, YYYY-MM-DD; null: none is known. */
  lastDay: string | null;
  /** Pieces that lie on no tray and that no earlier session needs; a bottle is one and is shared. */
  pieces: number;
}

/** A line of the kit list that the recalled lot would have served. */
export class KitLineAtRiskView {
  productId: string | null;
  configuration: string | null;
  label: string;
  quantityPieces: number;
  /** Whether what is left in date of other lots is enough, after what earlier sessions need. */
  enoughElse: boolean;
  /** The lots of the recall that first expired, first out would have taken. */
  lots: PlannedLotView[];
  /** At most five. */
  elseInDate: ElseInDateView[];
  elsePieces: number;
}

/** A session in setup or planned that would use a lot of the recall. */
export class PlannedSessionView {
  sessionId: string;
  clientId: string;
  clientReference: string;
  state: 'planned' | 'in setup';
  plannedStart: string | null;
  /** The studio's local day, YYYY-MM-DD; null: no time is planned. */
  day: string | null;
  visitKind: VisitKind;
  procedureId: string;
  procedureName: string;
  bodyPlace: BodyPlace;
  artistId: string;
  artistName: string | null;
  reasons: PlannedReason[];
  onTray: OnTrayView[];
  follows: FollowedExposureView | null;
  kitLines: KitLineAtRiskView[];
}

/** Sessions in setup first, then in the order in which they are planned. */
export class PlannedSessionsView {
  sessions: number;
  items: PlannedSessionView[];
  /** Session id; give it as `after` for the next page; null: this is the last. */
  next: string | null;
  /** More sessions are planned than are looked through; the latest are left out. */
  morePlanned: boolean;
}
