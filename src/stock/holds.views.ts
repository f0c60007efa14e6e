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
}
