import { CellFaultView, FileFaultView } from '../../platform/files/file-faults.views.js';

export class OpeningStockRowView {
  /** As a spreadsheet counts it: the header is row 1. */
  row: number;
  maker: string | null;
  product: string | null;
  shade: string | null;
  /** The code by which its lot is known; null when there is none. */
  code: string | null;
  /** Last day of use, YYYY-MM-DD; null when none is printed. */
  useBy: string | null;
  pieces: number;
  /** Bottles and boxes, each of which gets a label. */
  containers: number;
  /** Null: sealed. */
  openedOn: string | null;
  /** Estimated to be left in each opened bottle; null: as labelled. */
  remainingMicrolitres: number | null;
  place: string | null;
  /** What it would make or join; nothing while it has faults. */
  effects: ('new maker' | 'new product' | 'new GTIN' | 'new lot' | 'joins a lot' | 'corrects a lot')[];
  /** Why it would be put aside until somebody decides. */
  setAside: ('no lot printed' | 'lot unreadable' | 'no use-by printed' | 'already past')[];
  faults: CellFaultView[];
  warnings: string[];
}

export class OpeningStockCountsView {
  rows: number;
  faultyRows: number;
  makers: number;
  products: number;
  lots: number;
  containers: number;
}

/** What a file of opening stock would do. */
export class OpeningStockPreviewView {
  /** Whether it can be taken in as it is: there is no fault anywhere. */
  usable: boolean;
  counts: OpeningStockCountsView;
  /** Faults of the file as a whole or of its header; then no row was judged. */
  faults: FileFaultView[];
  warnings: string[];
  rows: OpeningStockRowView[];
}

export class TakenInStockRowView {
  row: number;
  lotId: string;
  /** Whether this file brought its first goods. */
  newLot: boolean;
  containerIds: string[];
  setAside: string[];
  warnings: string[];
}

export class TakenInStockView {
  deliveryId: string;
  recordedAt: string;
  counts: OpeningStockCountsView;
  rows: TakenInStockRowView[];
}
