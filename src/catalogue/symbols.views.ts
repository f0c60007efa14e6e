import { ProductView } from './products.views.js';

export class SymbolElementView {
  applicationIdentifier: string;
  value: string;
}

export class SymbolFaultView {
  code: string;
  applicationIdentifier: string | null;
  /** Character of the text, counted from 1. */
  position: number;
  seen: string;
  allowed: string;
  message: string;
}

/** What a symbol or typed text says. Nothing in it is taken from stock. */
export class SymbolView {
  kind: 'own label' | 'gs1' | 'product only' | 'plain text' | 'invalid';
  text: string;
  symbologyIdentifier: string | null;
  /** The code of a studio's own label. */
  labelCode: string | null;
  /** 14 digits. */
  gtin: string | null;
  lotCode: string | null;
  serial: string | null;
  /** Last day of use, YYYY-MM-DD. */
  useBy: string | null;
  useByPrecision: 'day' | 'month' | null;
  producedOn: string | null;
  elements: SymbolElementView[];
  /** Why it cannot be used, or why plain text is not what it looks like. */
  faults: SymbolFaultView[];
  /** The registered product of the GTIN. */
  product: ProductView | null;
  /** Pieces in what carries that GTIN. */
  contentCount: number | null;
}
