import type { BodyPlace } from './vocabulary.js';

export class ProcedureView {
  id: string;
  name: string;
  bodyPlace: BodyPlace;
  /** The touch-up window, in days after the first session; both days belong to it. */
  touchUpFromDays: number;
  touchUpToDays: number;
  /** Null: offered. */
  archivedAt: string | null;
  version: number;
}
