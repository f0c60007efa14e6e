import { Temporal } from 'temporal-polyfill';
import type { LastUsableDay } from '../../stock/opened-life.js';
import type { TouchUpObstacle, TouchUpWindow } from '../touch-up-window.js';
import { isUsableAt } from './usable-ahead.js';

/** A visit whose touch-up is still to come, with the pigments it used. */
export interface OwedMix {
  sessionId: string;
  /** When its touch-up is expected. */
  window: TouchUpWindow;
  /** The local day for which the touch-up is planned; null: it is not. */
  plannedOn: string | null;
  pigments: readonly { lotId: string; productId: string }[];
}

/** A container of a pigment that is here. */
export interface PigmentHere {
  lotId: string;
  productId: string;
  held: boolean;
  practice: boolean;
  /** Nothing of it is left by the book. */
  finished: boolean;
  end: Pick<LastUsableDay, 'lastDay' | 'lastInstant' | 'boundBy'>;
}

export interface PigmentAtRisk {
  lotId: string;
  productId: string;
  because: TouchUpObstacle;
  /** The last usable day of the lot's freshest container; null when none of it is here or none is known. */
  lastDay: string | null;
  /** Whether another lot of the same product may be used on the likely day. */
  anotherLotIsHere: boolean;
}

export interface TouchUpAtRisk {
  sessionId: string;
  opensOn: string;
  closesOn: string;
  /** The day it was judged for: the planned one, else the last of the window. */
  likelyOn: string;
  severity: 'notice' | 'warning';
  /** At least one: without another lot first, then by how soon they end. */
  pigments: PigmentAtRisk[];
}

/**
 * Which touch-ups cannot be made with the mix of their first visit: a pigment of it comes from a lot of which nothing may
 * be used through the likely day, since it is past its use-by or opened life then, is held, or is used up. The hour is not
 * known, so it has to last that whole day. One whose day is over is owed no longer.
 *
 * @param today the studio's local day
 * @param timeZone IANA time zone of the studio
 */
export function touchUpsAtRisk(
  owed: readonly OwedMix[],
  here: readonly PigmentHere[],
  today: string,
  timeZone: string,
): TouchUpAtRisk[] {
  const byProduct = new Map<string, PigmentHere[]>();
  for (const one of here) byProduct.set(one.productId, [...(byProduct.get(one.productId) ?? []), one]);
  return owed.flatMap(({ sessionId, window: { opensOn, closesOn }, plannedOn, pigments }) => {
    const likelyOn = plannedOn ?? closesOn;
    if (likelyOn < today) return [];
    const at = lastMoment(likelyOn, timeZone);
    const isUsable = (one: PigmentHere) => obstacleOf(one, likelyOn, at) === null;
    const atRisk = pigments.flatMap(({ lotId, productId }): PigmentAtRisk[] => {
      const ofProduct = byProduct.get(productId) ?? [];
      const ofLot = ofProduct.filter((one) => one.lotId === lotId);
      if (ofLot.some(isUsable)) return [];
      const freshest = [...ofLot].sort(byEndLatestFirst)[0];
      return [
        {
          lotId,
          productId,
          because: (freshest && obstacleOf(freshest, likelyOn, at)) ?? 'finished',
          lastDay: freshest?.end.lastDay ?? null,
          anotherLotIsHere: ofProduct.some((one) => one.lotId !== lotId && isUsable(one)),
        },
      ];
    });
    if (atRisk.length === 0) return [];
    atRisk.sort(worstFirst);
    const severity = atRisk.every((pigment) => pigment.anotherLotIsHere) ? 'notice' : 'warning';
    return [{ sessionId, opensOn, closesOn, likelyOn, severity, pigments: atRisk }];
  });
}

function lastMoment(day: string, timeZone: string): string {
  const nextDay = Temporal.PlainDate.from(day).add({ days: 1 }).toZonedDateTime(timeZone);
  return nextDay.subtract({ nanoseconds: 1 }).toInstant().toString();
}

function obstacleOf(
  { held, practice, finished, end }: PigmentHere,
  day: string,
  at: string,
): TouchUpObstacle | null {
  if (held) return 'held';
  if (practice) return 'practice only';
  if (finished) return 'finished';
  if (isUsableAt(end, day, at)) return null;
  return end.boundBy === 'opened life' ? 'open too long' : 'expired';
}

function byEndLatestFirst(one: PigmentHere, other: PigmentHere): number {
  const [end, otherEnd] = [one.end.lastDay ?? '9999', other.end.lastDay ?? '9999'];
  return end === otherEnd ? 0 : end > otherEnd ? -1 : 1;
}

function worstFirst(one: PigmentAtRisk, other: PigmentAtRisk): number {
  const rank = (pigment: PigmentAtRisk) =>
    `${pigment.anotherLotIsHere ? 1 : 0} ${pigment.lastDay ?? ''} ${pigment.lotId}`;
  return rank(one) < rank(other) ? -1 : 1;
}
