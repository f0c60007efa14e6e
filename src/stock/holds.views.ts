/** Somebody asks that a recall hold be released; another person then releases it. */
export class ReleaseRequestView {
  id: string;
  /** Who asks. */
  personId: string | null;
  reason: string;
  /** Where nobody else is there to see the thing. */
  photoId: string | null;
  occurredAt: string;
}

/** A hold that stands, with what it is on. */
export class OpenHoldView {
  id: string;
  kind: 'quarantine' | 'recall' | 'compliance';
  reason: string;
  note: string | null;
  /** The held lot, or the lot of the held container. */
  lotId: string;
  /** The one container that is held; null: the whole lot. */
  containerId: string | null;
  labelCode: string | null;
  lotCode: string | null;
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
  occurredAt: string;
  /** The latest request that it be released; null: nobody asked. */
  releaseRequest: ReleaseRequestView | null;
}

export class OpenHoldPageView {
  /** The latest first. */
  items: OpenHoldView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
}

export class HoldView {
  id: string;
  kind: 'quarantine' | 'recall' | 'compliance';
  /** Exactly one of lot and container is named. */
  lotId: string | null;
  containerId: string | null;
  reason: string;
  occurredAt: string;
  /** Null while it stands. */
  releasedAt: string | null;
  /** The latest request that it be released, or the one that the release answered; null: there is none. */
  releaseRequest: ReleaseRequestView | null;
  /** What stood for the second pair of eyes when it was released; null: none was needed, or it stands. */
  releaseSeenBy: 'second person' | 'photo' | null;
}
