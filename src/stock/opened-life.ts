import { Temporal } from 'temporal-polyfill';
import { localDay } from '../identity/local-day.js';
import { type OpenedLife, readOpenedLife } from '../identity/opened-life-duration.js';

/** What is known of one container. Days are ISO `YYYY-MM-DD`, instants ISO 8601, lives ISO 8601 durations. */
export interface ContainerLifeFacts {
  /** Last day of the printed use-by date, as read by `readUseBy`. */
  useByLastDay: string | null;
  /** When it was first opened; null while sealed. */
  openedAt: string | null;
  /** Opened life from the label. */
  openedLife: string | null;
  /** The studio's own opened life, counted only when the label gives none. */
  assumedOpenedLife: string | null;
  /**
   * The end of its opened life as the studio that sent it here judged it: the last usable day, or the last instant of a
   * life in hours; null when it did not come opened from another studio.
   */
  usableThrough: string | null;
}

export interface LastUsableDay {
  /** Usable through the end of this local day; null when nothing limits it as far as is known. */
  lastDay: string | null;
  /** What ends it first. When both end on the same day it is the opened life. */
  boundBy: 'use-by' | 'opened life' | 'none';
  /** Whose opened life was counted: none while sealed, or when neither label nor studio gives one. */
  lifeFrom: 'label' | 'assumed' | 'sending studio' | 'none';
  /** The last usable instant, UTC, when a life in hours ends it within `lastDay`; else null. */
  lastInstant: string | null;
}

/**
 * The last day on which a container may be used. Sealed: its use-by. Opened: through the end of the studio-local
 * day of opening plus the opened life, calendar months clamped to the month's end (31 Aug + 6 months = 28 or
 * 29 Feb), or through its use-by if that is earlier. A life in hours counts exact hours from the opening instant,
 * whatever the clocks do meanwhile. There is no published default for the opened life of pigments, so without a
 * label and a studio setting none is counted. Regulation (EC) 1223/2009, Art. 19(1)(c) [P], by analogy. What came opened
 * from another studio lasts no longer than it would have lasted there.
 *
 * @throws RangeError when a stored fact cannot be read: facts are checked where they come in
 */
export function lastUsableDay(facts: ContainerLifeFacts & { timeZone: string }): LastUsableDay {
  const own = ownLastUsableDay(facts);
  if (facts.openedAt === null || facts.usableThrough === null) return own;
  const told = toldEnd(facts.usableThrough, facts.timeZone);
  return endsBefore(told, own) ? { ...told, boundBy: 'opened life', lifeFrom: 'sending studio' } : own;
}

/**
 * What travels with an opened container to another studio: the end of its opened life, its use-by left aside, since that
 * travels with the lot.
 *
 * @returns the last usable day, ISO `YYYY-MM-DD`, or the last usable instant of a life in hours, UTC with milliseconds;
 * null while it is sealed, or when no opened life is known
 */
export function endOfOpenedLife(facts: ContainerLifeFacts & { timeZone: string }): string | null {
  if (facts.openedAt === null) return null;
  const { lastDay, lastInstant } = lastUsableDay({ ...facts, useByLastDay: null });
  if (lastInstant === null) return lastDay;
  return Temporal.Instant.from(lastInstant).toString({ fractionalSecondDigits: 3 });
}

type End = Pick<LastUsableDay, 'lastDay' | 'lastInstant'>;

function toldEnd(usableThrough: string, timeZone: string): End & { lastDay: string } {
  if (usableThrough.length === 'YYYY-MM-DD'.length) return { lastDay: usableThrough, lastInstant: null };
  return { lastDay: localDay(usableThrough, timeZone), lastInstant: usableThrough };
}

function endsBefore(told: End & { lastDay: string }, own: End): boolean {
  if (own.lastDay === null || told.lastDay < own.lastDay) return true;
  if (told.lastDay > own.lastDay || told.lastInstant === null) return false;
  return own.lastInstant === null || Temporal.Instant.compare(told.lastInstant, own.lastInstant) < 0;
}

function ownLastUsableDay(facts: ContainerLifeFacts & { timeZone: string }): LastUsableDay {
  const life = countedLife(facts);
  if (facts.openedAt === null || life === null) {
    return {
      lastDay: facts.useByLastDay,
      boundBy: facts.useByLastDay === null ? 'none' : 'use-by',
      lifeFrom: 'none',
      lastInstant: null,
    };
  }
  const end = endOfLife(facts.openedAt, life.life, facts.timeZone);
  const useByIsEarlier =
    facts.useByLastDay !== null && Temporal.PlainDate.compare(facts.useByLastDay, end.lastDay) < 0;
  return useByIsEarlier
    ? { lastDay: facts.useByLastDay, boundBy: 'use-by', lifeFrom: life.from, lastInstant: null }
    : { ...end, boundBy: 'opened life', lifeFrom: life.from };
}

function countedLife(facts: ContainerLifeFacts): { life: OpenedLife; from: 'label' | 'assumed' } | null {
  const text = facts.openedLife ?? facts.assumedOpenedLife;
  if (text === null) return null;
  const reading = readOpenedLife(text);
  if ('error' in reading) throw new RangeError(reading.error.message);
  return { life: reading, from: facts.openedLife === null ? 'assumed' : 'label' };
}

function endOfLife(
  openedAt: string,
  life: OpenedLife,
  timeZone: string,
): { lastDay: string; lastInstant: string | null } {
  if (life.unit === 'hours') {
    const lastInstant = Temporal.Instant.from(openedAt).add({ hours: life.amount }).toString();
    return { lastDay: localDay(lastInstant, timeZone), lastInstant };
  }
  const openedOn = Temporal.PlainDate.from(localDay(openedAt, timeZone));
  const lastDay = openedOn.add({ [life.unit]: life.amount }, { overflow: 'constrain' });
  return { lastDay: lastDay.toString(), lastInstant: null };
}
