import { MixView } from './mixes.views.js';
import type { KnownBy, SessionState, VisitKind } from './vocabulary.js';

export class DayKitItemView {
  productId: string | null;
  configuration: string | null;
  quantity: number;
  /** How a person calls it. */
  label: string;
}

export class DaySessionView {
  id: string;
  state: SessionState;
  /** The client's short code; a name is nothing a device keeps. */
  clientReference: string;
  procedureName: string;
  artistId: string;
  visitKind: VisitKind;
  plannedStart: string | null;
  touchUpFromDays: number;
  touchUpToDays: number;
  /** The lines of its kit list; null: it has none. */
  kitItems: DayKitItemView[] | null;
}

export class DayHoldView {
  kind: 'quarantine' | 'recall' | 'compliance';
  reason: string;
  on: 'container' | 'lot' | 'parent lot';
}

export class DayContainerView {
  containerId: string;
  lotId: string;
  productId: string;
  form: 'bottle' | 'box';
  labelCode: string;
  state: 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';
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
  stockForm: 'container' | 'pieces';
  openedLife: string | null;
  usableThrough: string | null;
  holds: DayHoldView[];
}

export class DayLineView {
  id: string;
  sessionId: string;
  containerId: string;
  lotId: string;
  productId: string;
  pieces: number;
  serial: string | null;
  knownBy: KnownBy;
  admittedAt: string;
}

export class DayLabelView {
  code: string;
  containerId: string;
  lotId: string;
  productId: string;
}

export class DayGtinView {
  gtin: string;
  productId: string;
  /** Pieces in the package with this number. */
  contentCount: number;
}

export class DayLotCodeView {
  code: string;
  lotId: string;
  productId: string;
  useBy: string | null;
}

export class DaySerialView {
  productId: string;
  serial: string;
}

export class DayPoolView {
  /** Products that stand for each other by their configuration. */
  productIds: string[];
  poolKeys: string[];
}

/** What a device is told of a day, so that it can judge scans by the same rules without network. */
export class DayFactsView {
  studioId: string;
  /** The service's clock. */
  asOf: string;
  /** The studio's local day, YYYY-MM-DD. */
  day: string;
  timeZone: string;
  assumedOpenedLife: string | null;
  /** Planned for the day, or in setup from whatever day. */
  sessions: DaySessionView[];
  /** What is present, and what lies on a tray though it was recorded as gone. */
  containers: DayContainerView[];
  labels: DayLabelView[];
  gtins: DayGtinView[];
  lotCodes: DayLotCodeView[];
  lines: DayLineView[];
  /** Of the sessions in setup. */
  mixes: MixView[];
  usedSerials: DaySerialView[];
  pools: DayPoolView[];
  /** Containers beyond what a device is given, which it does not know. */
  containersLeftOut: number;
}
