export class PooledProductView {
  id: string;
  makerName: string;
  name: string;
  notation: string | null;
  machineFit: string | null;
  membrane: 'yes' | 'no' | 'unknown' | null;
}

export class EquivalenceView {
  id: string;
  productId: string;
  otherProductId: string;
  reason: string;
  /** Instant. */
  declaredAt: string;
  /** Instant; null while it holds. */
  withdrawnAt: string | null;
}

/** Cartridges that stand for each other. */
export class ConfigurationView {
  /** What is known and equal; empty when too little is known, more than one only where a person declared them equivalent. */
  keys: string[];
  products: PooledProductView[];
  /** Whether a person's declaration holds it together, at least in part. */
  declared: boolean;
  equivalences: EquivalenceView[];
}
