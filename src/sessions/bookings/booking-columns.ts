/** The columns of a list of bookings, in the order of its template. A file may have them in any order. */
export const bookingColumns = [
  { name: 'booking id', needed: false },
  { name: 'client reference', needed: false },
  { name: 'client name', needed: false },
  { name: 'contact', needed: false },
  { name: 'artist', needed: false },
  { name: 'procedure', needed: false },
  { name: 'visit', needed: false },
  { name: 'planned start', needed: true },
  { name: 'booked at', needed: false },
] as const;

export type BookingColumn = (typeof bookingColumns)[number]['name'];

export type BookingCells = Partial<Record<BookingColumn, string>>;

/** Rows that show what may stand where: somebody new with a contact, somebody known by reference. */
export const bookingExample: readonly BookingCells[] = [
  {
    'booking id': 'B-1001',
    'client name': 'Ida Sommer',
    contact: '+43 1 5550100',
    artist: 'Mara Lindqvist',
    procedure: 'Powdered brows',
    visit: 'first session',
    'planned start': '2027-04-03 14:30',
    'booked at': '2027-03-01',
  },
  {
    'booking id': 'B-1002',
    'client reference': '7KQ2-M4',
    artist: 'Mara Lindqvist',
    procedure: 'Powdered brows',
    visit: 'touch-up',
    'planned start': '2027-04-03 16:00',
  },
];
