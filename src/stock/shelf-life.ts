import { Temporal } from 'temporal-polyfill';
import { localDay } from '../identity/local-day.js';
import { type ContainerLifeFacts, type LastUsableDay, lastUsableDay } from './opened-life.js';

export type ShelfLifeStatus = 'usable' | 'expired' | 'open too long' | 'no date known';

/** Whether it may no longer be used: its use-by or its opened life has ended. */
export function isPast(status: ShelfLifeStatus): status is 'expired' | 'open too long' {
  return status === 'expired' || status === 'open too long';
}

export interface ShelfLife {
  /**
   * Whether it may be used at the instant. When use-by and opened life have both ended, the status names the
   * one that ended first, which is also the one `lastDay` belongs to.
   */
  status: ShelfLifeStatus;
  /** Last usable local day, ISO `YYYY-MM-DD`; null when no date is known. */
  lastDay: string | null;
  /** Last usable instant, UTC, when a life in hours ends it within `lastDay`; else null. */
  lastInstant: string | null;
  boundBy: LastUsableDay['boundBy'];
  /** Local days from the day judged to the last day: 0 on the last day, negative after it. */
  daysLeft: number | null;
  openedLifeFrom: LastUsableDay['lifeFrom'];
  sentence: ShelfLifeSentence;
}

/** The answer in words for a person, each part a sentence of its own; empty when there is nothing to say. */
export interface ShelfLifeSentence {
  seen: string;
  allowed: string;
  next: string;
}

/**
 * Judges whether a container may be used at an instant, on the studio's local day. Use-by and opened life both
 * run through the end of their last day (ISO 15223-1:2021, 5.1.4 [S]); a life in hours runs to its instant.
 *
 * @param at ISO 8601 instant of use (when it happened, not when it was written down)
 * @param timeZone IANA time zone of the studio
 * @throws RangeError when a stored fact cannot be read
 */
export function judgeShelfLife(facts: ContainerLifeFacts, at: string, timeZone: string): ShelfLife {
  const last = lastUsableDay({ ...facts, timeZone });
  const daysLeft =
    last.lastDay === null
      ? null
      : Temporal.PlainDate.from(localDay(at, timeZone)).until(last.lastDay, { largestUnit: 'days' }).days;
  const status = statusAt(last, daysLeft, at);
  return {
    status,
    lastDay: last.lastDay,
    lastInstant: last.lastInstant,
    boundBy: last.boundBy,
    daysLeft,
    openedLifeFrom: last.lifeFrom,
    sentence: sentenceFor(facts, last, status, timeZone),
  };
}

function statusAt(last: LastUsableDay, daysLeft: number | null, at: string): ShelfLifeStatus {
  if (daysLeft === null) return 'no date known';
  const ended = last.lastInstant === null ? daysLeft < 0 : Temporal.Instant.compare(at, last.lastInstant) > 0;
  if (!ended) return 'usable';
  return last.boundBy === 'opened life' ? 'open too long' : 'expired';
}

function sentenceFor(
  facts: ContainerLifeFacts,
  last: LastUsableDay,
  status: ShelfLifeStatus,
  timeZone: string,
): ShelfLifeSentence {
  return {
    seen: seenOf(facts, last, timeZone),
    allowed: allowedBy(last, timeZone),
    next: nextFor(facts, last, status),
  };
}

function seenOf(facts: ContainerLifeFacts, last: LastUsableDay, timeZone: string): string {
  const useBy = facts.useByLastDay === null ? 'no use-by date recorded' : `use-by ${facts.useByLastDay}`;
  if (facts.openedAt === null) return `Sealed, ${useBy}.`;
  const life =
    last.lifeFrom === 'label'
      ? `opened life ${facts.openedLife} from the label`
      : last.lifeFrom === 'assumed'
        ? `opened life ${facts.assumedOpenedLife} assumed by the studio`
        : last.lifeFrom === 'sending studio'
          ? 'opened life as counted in the studio it came from'
          : 'no opened life known';
  return `Opened on ${localDay(facts.openedAt, timeZone)}, ${life}, ${useBy}.`;
}

function allowedBy(last: LastUsableDay, timeZone: string): string {
  if (last.lastDay === null) return 'No last usable day can be worked out.';
  if (last.lastInstant === null) return `Usable through the end of ${last.lastDay}.`;
  const local = Temporal.Instant.from(last.lastInstant).toZonedDateTimeISO(timeZone).toPlainDateTime();
  return `Usable until ${last.lastDay} ${local.toPlainTime().toString({ smallestUnit: 'minute' })}.`;
}

function nextFor(facts: ContainerLifeFacts, last: LastUsableDay, status: ShelfLifeStatus): string {
  if (isPast(status)) return 'Put it aside and take another.';
  if (status === 'no date known') return 'Look for a date on the label and record it before use.';
  if (facts.openedAt !== null && last.lifeFrom === 'none') return 'Record the opened life from the label.';
  if (last.lifeFrom === 'assumed') return 'Compare with the label: its opened life comes first.';
  return '';
}
