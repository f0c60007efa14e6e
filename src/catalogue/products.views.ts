/** A number under which a product is traded. */
export class GtinView {
  /** 14 digits. */
  gtin: string;
  /** Pieces inside: 1 for the single unit. */
  contentCount: number;
  version: number;
}

export class ProductView {
  id: string;
  kind: 'pigment' | 'cartridge' | 'consumable';
  makerId: string;
  makerName: string;
  name: string;
  /** A container is opened and used over many sessions; pieces are counted from a box. */
  stockForm: 'container' | 'pieces';
  shade: string | null;
  pigmentRole: 'colour' | 'thinner' | null;
  volumeMicrolitres: number | null;
  /** ISO 8601 duration; null when the label gives none. */
  openedLife: string | null;
  dropMicrolitres: number | null;
  colourIndexNumbers: string[];
  points: number | null;
  grouping:
    | 'round liner'
    | 'round shader'
    | 'magnum'
    | 'stacked magnum'
    | 'curved magnum'
    | 'flat'
    | 'slope'
    | 'hand blade'
    | null;
  diameterHundredthsMillimetre: number | null;
  taper: 'short' | 'medium' | 'long' | 'extra long' | null;
  machineFit: string | null;
  membrane: 'yes' | 'no' | 'unknown' | null;
  /** Trade notation of a cartridge whose grouping is known. */
  notation: string | null;
  gtins: GtinView[];
  archived: boolean;
  version: number;
}

export class ProductPageView {
  items: ProductView[];
  /** Give it as `after` for the next page; null on the last. */
  next: string | null;
}
