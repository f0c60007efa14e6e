/** What one container gave to a cup, slips taken back. */
export class MixPartView {
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  isThinner: boolean;
  lotId: string;
  lotCode: string | null;
  containerId: string;
  /** Null when any of it was given as a volume. */
  drops: number | null;
  /** An estimate. */
  microlitres: number;
}

/** What was dropped into one single-use cup. */
export class MixView {
  id: string;
  sessionId: string;
  label: string;
  occurredAt: string;
  parts: MixPartView[];
  /** Of all parts together, an estimate. */
  microlitres: number;
}

/** A mix after something was added to it. */
export class AddedToMixView extends MixView {
  /** Why the bottle may not be used any more; what was dropped is in the mix all the same. */
  warnings: string[];
}
