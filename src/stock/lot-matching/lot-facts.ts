import type { RecordedUseBy } from './day-spans.js';

/** What the register knows of a product, as far as a notice can name it. */
export interface ProductFacts {
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  /** 14 digits each. */
  gtins: readonly string[];
}

export interface RecordedCode {
  kind: 'lot' | 'batch' | 'other';
  code: string;
  /** It stood on record before it was corrected. */
  superseded: boolean;
}

/** What the record knows of a lot. */
export interface LotFacts extends ProductFacts, RecordedUseBy {
  lotId: string;
  codes: readonly RecordedCode[];
  codeState: 'printed' | 'none printed' | 'unreadable';
  /** YYYY-MM-DD */
  manufacturedOn: string | null;
}
