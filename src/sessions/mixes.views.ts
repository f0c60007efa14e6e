export class CupComponentView {
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

export class CupView {
  id: string;
  sessionId: string;
  label: string;
  components: CupComponentView[];
  /** An estimate. */
  microlitres: number;
}
