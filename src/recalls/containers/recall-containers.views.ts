/** Somebody looked for a container. */
export class ContainerFindingView {
  id: string;
  result: 'found' | 'not found';
  /** Where it was put aside; in a drill where it would have been. */
  placeId: string | null;
  tag: string | null;
  photoId: string | null;
  note: string | null;
  occurredAt: string;
  personId: string | null;
}

/** What became of held stock. */
export class DispositionView {
  id: string;
  kind: 'returned' | 'destroyed';
  /** Null: the book had nothing left of it. */
  movementId: string | null;
  pieces: number;
  /** An estimate. */
  microlitres: number;
  witnessId: string | null;
  photoId: string | null;
  reference: string;
  occurredAt: string;
  personId: string | null;
}

/** A tray on which it lies now. */
export class RecallTrayView {
  sessionId: string;
  /** Pieces of a box that are reserved; 0: a bottle that is shared. */
  pieces: number;
}

/** A container of a lot of the recall, or of a house blend made of one. */
export class RecallContainerView {
  containerId: string;
  labelCode: string;
  form: 'bottle' | 'box';
  state: 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
  lotId: string;
  lotCode: string | null;
  useBy: string | null;
  /** Of the lot of the recall that is in it; `affected` when there is one of each. */
  lotStanding: 'affected' | 'undecided';
  /** Whether it is a house blend in which a lot of the recall is. */
  throughBlend: boolean;
  placeId: string;
  placeName: string;
  placeKind: 'shelf' | 'treatment room' | 'travelling case' | 'practice shelf' | 'set aside';
  /** The artist whose it is; null: the studio's. */
  ownerId: string | null;
  openedAt: string | null;
  /** Left by the book. */
  pieces: number;
  /** An estimate. */
  microlitres: number;
  /** `gone`: nothing is left of it, and not by a disposition. */
  standing: 'not looked for' | 'found' | 'not found' | 'disposed' | 'gone';
  /** The latest look for it; null: nobody looked yet. */
  finding: ContainerFindingView | null;
  /** The earliest first, at most 100. */
  dispositions: DispositionView[];
  /** At most 100. */
  trays: RecallTrayView[];
}

/** Containers by how they stand. */
export class RecallContainerTotalsView {
  containers: number;
  notLookedFor: number;
  found: number;
  notFound: number;
  disposed: number;
  gone: number;
  /** Left by the book, in all. */
  piecesLeft: number;
  /** An estimate. */
  microlitresLeft: number;
}

export class RecallContainerPageView {
  items: RecallContainerView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
  /** Of all containers, whatever the page shows. */
  totals: RecallContainerTotalsView;
}

/** What was recorded of a container of a recall. */
export class RecordedFindingView {
  finding: ContainerFindingView;
  /** Whether it was moved to the named place; not in a drill, and not when it is gone by the record. */
  moved: boolean;
  /** What the person should know; what was seen is recorded all the same. */
  warnings: string[];
}

export class RecordedDispositionView {
  disposition: DispositionView;
  warnings: string[];
}
