export class BlendParentView {
  containerId: string;
  lotId: string;
  /** An estimate. */
  microlitres: number;
}

/** A house blend: pigments poured together by the studio into a kept container. */
export class BlendView {
  id: string;
  productId: string;
  lotId: string;
  containerId: string;
  /** The lot code of the blend. */
  code: string;
  labelCode: string;
  useBy: string | null;
  /** An estimate. */
  microlitres: number;
  occurredAt: string;
  parents: BlendParentView[];
}

export class BlendPageView {
  /** The latest first. */
  items: BlendView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
}
