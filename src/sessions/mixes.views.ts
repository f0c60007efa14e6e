export class MixComponentView {
  containerId: string;
  lotId: string;
  productId: string;
  label: string;
  lotCode: string | null;
  /** Null when any of it was given as a volume. */
  drops: number | null;
  /** An estimate. */
  microlitres: number;
  isThinner: boolean;
}

export class MixView {
  id: string;
  sessionId: string;
  label: string;
  components: MixComponentView[];
  /** An estimate. */
  microlitres: number;
}
