import { CellFaultView, FileFaultView } from '../../platform/files/file-faults.views.js';

export class BookingRowView {
  /** Of a table as a spreadsheet counts it, the header being row 1; of a calendar which of its entries, from 1. */
  row: number;
  /** Who comes, as the file says it; null when it names a reference. Told to whoever brought the file, kept nowhere. */
  clientName: string | null;
  /** Of a client on record. */
  clientReference: string | null;
  /** Whether the client is not on record yet, and would be put there by this row or by one above. */
  newClient: boolean;
  artist: string | null;
  procedure: string | null;
  visitKind: string | null;
  /** Instant; null when it is at fault. */
  plannedStart: string | null;
  /** What it would do; null while it has faults. */
  effect: 'new session' | 'on record already' | 'left out' | null;
  /** The session that is on record already. */
  sessionId: string | null;
  faults: CellFaultView[];
  warnings: string[];
}

export class BookingCountsView {
  rows: number;
  faultyRows: number;
  sessions: number;
  clients: number;
  onRecord: number;
  leftOut: number;
}

/** What a list of bookings would do. */
export class BookingsPreviewView {
  /** Whether it can be taken in as it is: there is no fault anywhere. */
  usable: boolean;
  kind: 'table' | 'calendar';
  counts: BookingCountsView;
  /** Faults of the file as a whole or of its header; then no row was judged. */
  faults: FileFaultView[];
  rows: BookingRowView[];
}

export class TakenInBookingView {
  row: number;
  sessionId: string;
  plannedStart: string;
  clientId: string;
  clientReference: string;
  newClient: boolean;
}

/** What was taken in; it holds no name, for it is kept for repeated requests. */
export class TakenInBookingsView {
  recordedAt: string;
  counts: BookingCountsView;
  /** The sessions that were made. */
  rows: TakenInBookingView[];
}
