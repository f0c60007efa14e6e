import type {
  Booking,
  DemandFacts,
  LapsedBooking,
  OwedVisit,
  PastSession,
  SessionAmount,
} from '../../src/reorder/demand/demand-facts.js';
import { uniform } from './made-series.js';

const procedures = ['brows', 'lips', 'eyeliner'];
const artists = ['ada', 'ben', 'cleo'];
const weeksPast = 60;
const daysBooked = 40;
/** The day of the plan is a Wednesday; nobody works at weekends. */
const weekday = 3;

/**
 * A studio that works five days a week and takes a needle in every session, shades seldom and unevenly (`shade 0` most);
 * three of four clients come back 30 to 43 days later and take nine tenths of the same things.
 */
export function madeStudio(seed: number, { shades = 30, days = 120 } = {}): DemandFacts {
  const random = uniform(seed);
  const pick = <One>(many: readonly One[]) => many[Math.floor(random() * many.length)] as One;
  const sessions: PastSession[] = [];
  const bookings: Booking[] = [];
  const lapsedBookings: LapsedBooking[] = [];
  const owedTouchUps: OwedVisit[] = [];
  let number = 0;
  const open = (day: number) => (((day + weekday - 1) % 7) + 7) % 7 < 5;
  for (let day = -7 * weeksPast; day < daysBooked; day++) {
    for (let chair = 0; chair < 4 && open(day); chair++) {
      if (random() < 0.3) continue;
      const visit = {
        procedureId: pick(procedures),
        artistId: pick(artists),
        visitKind: 'first session' as const,
      };
      const ahead = random() < 0.1 ? 0 : Math.floor(-20 * Math.log(1 - random()));
      const uses: SessionAmount[] = [{ item: 'needle', amount: random() < 0.2 ? 2 : 1 }];
      for (let drops = 0; drops < 2; drops++) {
        const item = `shade ${Math.floor(shades * random() ** 2.5)}`;
        if (!uses.some((use) => use.item === item))
          uses.push({ item, amount: 50 * (1 + Math.floor(6 * random())) });
      }
      if (day >= 0) {
        if (ahead > day) bookings.push({ ...visit, day, followsSessionId: null });
        continue;
      }
      if (random() < 0.07) {
        lapsedBookings.push({ visitKind: visit.visitKind, day, bookedOn: day - ahead, calledOffOn: day });
        continue;
      }
      const id = `session ${number++}`;
      sessions.push({ ...visit, id, day, bookedOn: day - ahead, followsSessionId: null, uses });
      let back = day + 30 + Math.floor(12 * random());
      while (!open(back)) back++;
      const touchUp = { ...visit, visitKind: 'touch-up' as const, day: back, followsSessionId: id };
      const comes = random() < 0.75;
      if (comes && back < 0) {
        const again = uses.filter(() => random() < 0.9);
        sessions.push({ ...touchUp, id: `touch-up ${id}`, bookedOn: day, uses: again });
      } else if (comes && random() < 0.5) bookings.push(touchUp);
      else owedTouchUps.push({ sessionId: id });
    }
  }
  return {
    ...{ weekday, days, recordedFrom: -7 * weeksPast, sessions, bookings, lapsedBookings, owedTouchUps },
    unmetWants: [],
    courses: [],
    touchUpDays: new Map(procedures.map((procedure) => [procedure, { fromDays: 30, toDays: 40 }])),
    kitLists: [],
    lastDays: new Map(),
    returnPerMille: null,
  };
}
