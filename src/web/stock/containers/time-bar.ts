import { Temporal } from 'temporal-polyfill';

/** What is drawn of one container; days are the studio's, YYYY-MM-DD. */
export interface TimeBarFacts {
  receivedOn: string;
  /** Null while sealed. */
  openedOn: string | null;
  /** Where the opened life ends by itself; null when none is known. */
  openedLifeLastDay: string | null;
  /** The label's use-by; null when none is known. */
  useBy: string | null;
  today: string;
}

export type TimeMarkKind = 'received' | 'opened' | 'today' | 'opened life' | 'use-by';

export interface TimeMark {
  kind: TimeMarkKind;
  day: string;
  /** Where it stands on the bar, 0 at its left end, 1 at its right. */
  at: number;
  /** It lies so much later than the end that it is only pointed at. */
  isBeyond: boolean;
}

export interface TimeBar {
  /** In the order of their days; of one day, what begins it stands before what ends with it. */
  marks: TimeMark[];
  /** The limit that comes first: through the end of its day the container may be used. Null: none is known. */
  end: TimeMark | null;
  isPast: boolean;
  /** What went by of the time in which it could be used; null when there was none, as it came past its end. */
  gone: Stretch | null;
  /** What is left of it; null when it is past, or when no end is known. */
  left: Stretch | null;
  /** Since when it is past; null when it is not. */
  over: Stretch | null;
}

export interface Stretch {
  from: number;
  to: number;
}

/** What comes after the end is drawn to scale when it does not squeeze the rest below about three quarters. */
const mostRoomAfterEnd = 1.35;
/** So much of the bar is left free behind the last mark. */
const margin = 0.04;

/** Limits hold through the end of their day, what happened stands in the middle of it. */
const partOfDay: Record<TimeMarkKind, number> = {
  received: 0.5,
  opened: 0.5,
  today: 0.5,
  'opened life': 1,
  'use-by': 1,
};

/**
 * Puts the days of a container on one line. The limit that comes first is the end; of two on one day it is the opened
 * life, as in `lastUsableDay`.
 */
export function timeBar(facts: TimeBarFacts): TimeBar {
  const { receivedOn, openedOn, openedLifeLastDay, useBy, today } = facts;
  const days: { kind: TimeMarkKind; day: string | null }[] = [
    { kind: 'received', day: receivedOn },
    { kind: 'opened', day: openedOn },
    { kind: 'today', day: today },
    { kind: 'opened life', day: openedLifeLastDay },
    { kind: 'use-by', day: useBy },
  ];
  const known = days
    .filter((one): one is { kind: TimeMarkKind; day: string } => one.day !== null)
    .map((one) => ({ ...one, time: dayNumber(one.day) + partOfDay[one.kind] }))
    .sort((one, other) => one.time - other.time);
  const first = known.find(({ kind }) => kind === 'opened life' || kind === 'use-by');
  const scale = scaleOf(known, first?.time);
  const marks = known.map(({ kind, day, time }) => ({ kind, day, ...scale(time) }));
  const end = first === undefined ? null : (marks.find(({ kind }) => kind === first.kind) ?? null);
  const at = (kind: TimeMarkKind) => marks.find((mark) => mark.kind === kind)?.at ?? 0;
  const now = at('today');
  const begin = Math.min(openedOn === null ? 1 : at('opened'), at('received'), now);
  const isPast = end !== null && end.at < now;
  const until = isPast ? end.at : now;
  return {
    marks,
    end,
    isPast,
    gone: until > begin ? { from: begin, to: until } : null,
    left: end === null || isPast ? null : { from: now, to: end.at },
    over: isPast ? { from: end.at, to: now } : null,
  };
}

type Scale = (time: number) => Pick<TimeMark, 'at' | 'isBeyond'>;

function scaleOf(known: readonly { kind: TimeMarkKind; time: number }[], end: number | undefined): Scale {
  const start = Math.min(...known.map(({ time }) => time));
  const happened = known.filter(({ kind }) => partOfDay[kind] < 1).map(({ time }) => time);
  const needed = Math.max(...happened, end ?? start);
  const room = start + (needed - start) * mostRoomAfterEnd;
  const last = Math.max(needed, ...known.map(({ time }) => time).filter((time) => time <= room));
  const length = Math.max(last - start, 1) * (1 + margin);
  return (time) => ({ at: Math.min(1, (time - start) / length), isBeyond: time > last });
}

function dayNumber(day: string): number {
  return Temporal.PlainDate.from('1970-01-01').until(day, { largestUnit: 'days' }).days;
}
