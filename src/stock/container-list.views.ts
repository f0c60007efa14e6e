export class ContainerHoldView {
  holdId: string;
  kind: 'quarantine' | 'recall' | 'compliance';
  reason: string;
  /** Where it was placed; `parent lot`: on a lot that was blended into this one. */
  on: 'container' | 'lot' | 'parent lot';
}

/** How long it may be used, judged on the studio's day. */
export class ContainerLifeView {
  status: 'usable' | 'expired' | 'open too long' | 'no date known';
  /** Last usable local day; null when no date is known. */
  lastDay: string | null;
  /** Last usable instant, when a life in hours ends it within the last day. */
  lastInstant: string | null;
  /** 0 on the last day, negative after it. */
  daysLeft: number | null;
  boundBy: 'use-by' | 'opened life' | 'none';
  /** Where the opened life ends by itself, also when the use-by is earlier; null while sealed, or when none is known. */
  openedLifeLastDay: string | null;
  /** Whether the opened life counted is the label's, assumed by the studio, or told by the one that sent it here opened. */
  openedLifeFrom: 'label' | 'assumed' | 'sending studio' | 'none';
  /** What was seen, what is allowed and what to do, in words. */
  seen: string;
  allowed: string;
  next: string;
}

/** A bottle or tube, or a box of counted pieces. */
export class ContainerView {
  id: string;
  lotId: string;
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
  kind: 'pigment' | 'cartridge' | 'consumable';
  form: 'bottle' | 'box';
  labelCode: string;
  state: 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';
  placeId: string;
  /** The artist whose it is; null: the studio's. */
  ownerId: string | null;
  openedAt: string | null;
  receivedAt: string;
  pieces: number;
  /** By the book, an estimate. */
  microlitres: number;
  lotCode: string | null;
  codeState: 'printed' | 'none printed' | 'unreadable';
  useBy: string | null;
  useByPrecision: 'day' | 'month' | 'year' | 'none printed';
  held: boolean;
  holds: ContainerHoldView[];
  life: ContainerLifeView;
  version: number;
}

/** What of a container is laid out for sessions. */
export class ReservedView {
  /** Lines of trays on which it lies. */
  lines: number;
  pieces: number;
}

export class ShownContainerView extends ContainerView {
  onTrays: ReservedView;
}

export class ContainerPageView {
  items: ContainerView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
}

export class LeftOutContainerView {
  container: ContainerView;
  reasons: ('held' | 'expired' | 'open too long' | 'practice stock' | 'finished')[];
}

/** What to take of a product, and in which order. */
export class ContainerPickView {
  /** Opened before sealed, then the first to expire; the one to take at the front. */
  order: ContainerView[];
  leftOut: LeftOutContainerView[];
}
