/** A secret address at which a calendar program reads what ends when. */
export class CalendarAddressView {
  id: string;
  createdAt: string;
}

export class OwnCalendarAddressView {
  /** Null: you have none. */
  address: CalendarAddressView | null;
}

export class MadeCalendarAddressView {
  id: string;
  createdAt: string;
  /** The address itself: shown in this answer and never again. Whoever has it can read the calendar. */
  url: string;
}

export class RemovedCalendarAddressView {
  id: string;
  removedAt: string;
}
