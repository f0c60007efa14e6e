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
}

export interface LastUsableDay {
  /** Usable through the end of this local day; null when nothing limits it as far as is known. */
  lastDay: string | null;
  /** What ends it first. When both end on the same day it is the opened life. */
  boundBy: 'use-by' | 'opened life' | 'none';
  /** Whose opened life was counted: none while sealed, or when neither label nor studio gives one. */
  lifeFrom: 'label' | 'assumed' | 'none';
  /** The last usable instant, UTC, when a life in hours ends it within `lastDay`; else null. */
  lastInstant: string | null;
}

/**
 * The last day on which a container may be used. Sealed: its use-by. Opened: through the end of the studio-local
 * day of opening plus the opened life, calendar months clamped to the month's end (31 Aug + 6 months = 28 or
 * 29 Feb), or through its use-by if that is earlier. A life in hours counts exact hours from the opening instant,
 * whatever the clocks do meanwhile. There is no published default for the opened life of pigments, so without a
 * label and a studio setting none is counted. Regulation (EC) 1223/2009, Art. 19(1)(c) [P], by analogy.
 *
 * @throws RangeError when a stored fact cannot be read: facts are checked where they come in
 */
export function lastUsableDay(facts: ContainerLifeFacts & { timeZone: string }): LastUsableDay {
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
