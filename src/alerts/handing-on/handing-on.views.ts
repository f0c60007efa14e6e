/** When an urgent alert that nobody acknowledges goes on to the next person, and who that is. */
export class HandingOnView {
  /** Minutes, 5 to 1440; null: it is not handed on. */
  afterMinutes: number | null;
  /** Who is told, in this order; empty: managers, then owners, as they came. */
  personIds: string[];
  /** The order as it stands today, of those who still work here. */
  order: string[];
  /** True: the studio chose nothing, and this is assumed. */
  isDefault: boolean;
  /** Null while it is assumed. */
  version: number | null;
  /** In the answer to a change: who was handed in, works here no more and is therefore not in the order; else empty. */
  droppedPersonIds: string[];
}
