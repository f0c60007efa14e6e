import { Temporal } from 'temporal-polyfill';
import type { ContainerLifeFacts } from '../stock/opened-life.js';
import { isPast, judgeShelfLife, type ShelfLife } from '../stock/shelf-life.js';
import type { VisitKind } from './vocabulary.js';

/** From and to, in days after the session; both days belong to the window. A setting of the procedure. */
export interface TouchUpDays {
  fromDays: number;
  toDays: number;
}

/** 30 to 40 days is one common rule; others say 4–8 or 6–8 weeks [S]. Every procedure may set its own. */
export const DEFAULT_TOUCH_UP_DAYS: TouchUpDays = { fromDays: 30, toDays: 40 };
export const MOST_TOUCH_UP_DAYS = 3650;

/** First and last local day of the window, ISO `YYYY-MM-DD`; both belong to it. */
export interface TouchUpWindow {
  opensOn: string;
  closesOn: string;
}

/** One part of the first session's mix: the lot, and the container it was dropped from where that is known. */
export interface PartOfMix extends ContainerLifeFacts {
  lotId: string;
  containerId: string | null;
  label: string;
  /** True while any hold on it or on any ancestor lot is open. */
  held: boolean;
  /** Kept for practice skin only. */
  practice: boolean;
  /** Emptied, or nothing of it left. */
  finished: boolean;
}

export type TouchUpAnswer = 'yes' | 'no' | 'no date known';

export type TouchUpObstacle = 'held' | 'finished' | 'practice only' | 'expired' | 'open too long';

export interface PartAtTouchUp {
  lotId: string;
  containerId: string | null;
  label: string;
  usableAtStart: TouchUpAnswer;
  usableAtEnd: TouchUpAnswer;
  /** Last usable local day; null when no date is known. */
  lastDay: string | null;
  openedLifeFrom: ShelfLife['openedLifeFrom'];
  /** Everything that stands against using it on some day of the window; empty when nothing does. */
  whyNot: { obstacle: TouchUpObstacle; message: string }[];
}

/**
 * The window in which the touch-up is due.
 *
 * @param completedOn local day of the first session, ISO `YYYY-MM-DD`
 * @throws RangeError when the days are not whole, run backwards, or lie beyond ten years
 */
export function touchUpWindow(completedOn: string, days: TouchUpDays = DEFAULT_TOUCH_UP_DAYS): TouchUpWindow {
  const { fromDays, toDays } = days;
  const whole = Number.isInteger(fromDays) && Number.isInteger(toDays);
  if (!whole || fromDays < 0 || toDays < fromDays || toDays > MOST_TOUCH_UP_DAYS) {
    throw new RangeError(
      `A touch-up from ${fromDays} to ${toDays} days was given. Allowed are whole days from 0 to ` +
        `${MOST_TOUCH_UP_DAYS}, the first not after the last. Correct the setting of the procedure.`,
    );
  }
  const completed = Temporal.PlainDate.from(completedOn);
  return {
    opensOn: completed.add({ days: fromDays }).toString(),
    closesOn: completed.add({ days: toDays }).toString(),
  };
}

/** Visits after which a touch-up with the same mix is expected. */
export const visitsWithTouchUp: ReadonlySet<VisitKind> = new Set<VisitKind>(['first session', 'correction']);

/**
 * The last day on which the touch-up of a visit may fall.
 *
 * @param day local day of the visit
 * @returns null when no touch-up is expected after such a visit
 */
export function touchUpExpectedBy(visitKind: VisitKind, day: string, days: TouchUpDays): string | null {
  return visitsWithTouchUp.has(visitKind) ? touchUpWindow(day, days).closesOn : null;
}

/**
 * Tells of each part of a mix whether it can be used again on the first and on the last day of the window. The
 * hour of the touch-up is not known yet, so a part has to last the whole day. Holds and emptied bottles are taken
 * as they stand now.
 *
 * @param timeZone IANA time zone of the studio
 */
export function mixAtTouchUp(
  parts: readonly PartOfMix[],
  window: TouchUpWindow,
  timeZone: string,
): PartAtTouchUp[] {
  const atStart = lastMoment(window.opensOn, timeZone);
  const atEnd = lastMoment(window.closesOn, timeZone);
  return parts.map((part) => {
    const start = judgeShelfLife(part, atStart, timeZone);
    const end = judgeShelfLife(part, atEnd, timeZone);
    const inTheWay = part.held || part.practice || part.finished;
    return {
      lotId: part.lotId,
      containerId: part.containerId,
      label: part.label,
      usableAtStart: inTheWay ? 'no' : answer(start),
      usableAtEnd: inTheWay ? 'no' : answer(end),
      lastDay: end.lastDay,
      openedLifeFrom: end.openedLifeFrom,
      whyNot: obstacles(part, end),
    };
  });
}

function lastMoment(day: string, timeZone: string): string {
  const nextDay = Temporal.PlainDate.from(day).add({ days: 1 }).toZonedDateTime(timeZone);
  return nextDay.subtract({ nanoseconds: 1 }).toInstant().toString();
}

function answer(life: ShelfLife): TouchUpAnswer {
  if (life.status === 'usable') return 'yes';
  return life.status === 'no date known' ? 'no date known' : 'no';
}

function obstacles(part: PartOfMix, atEnd: ShelfLife): PartAtTouchUp['whyNot'] {
  const whyNot: PartAtTouchUp['whyNot'] = [];
  const { label } = part;
  if (part.held) {
    whyNot.push({
      obstacle: 'held',
      message: `${label} is on hold. It may be used once the hold is released; plan another.`,
    });
  }
  if (isPast(atEnd.status)) {
    const { seen, allowed } = atEnd.sentence;
    whyNot.push({
      obstacle: atEnd.status,
      message: `${label}: ${seen} ${allowed} Book the touch-up before then or plan another.`,
    });
  }
  if (part.practice) {
    whyNot.push({
      obstacle: 'practice only',
      message: `${label} is kept for practice skin only. Plan another of the same shade.`,
    });
  }
  if (part.finished) {
    whyNot.push({ obstacle: 'finished', message: `${label} is used up. Plan another of the same shade.` });
  }
  return whyNot;
}
