import { Temporal } from 'temporal-polyfill';
import { hasEnded } from './container-transitions.js';
import { type ContainerLifeFacts, lastUsableDay } from './opened-life.js';
import { judgeShelfLife } from './shelf-life.js';

/** A bottle to be poured into a blend. */
export interface BlendParentFacts extends ContainerLifeFacts {
  containerId: string;
  /** How a person calls it. */
  label: string;
  isPigment: boolean;
  state: 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';
  holdKinds: readonly ('quarantine' | 'recall' | 'compliance')[];
}

export type BlendAdmission =
  | {
      admitted: true;
      /** The earliest last usable day of the parents as they stand opened; null when none has one. */
      latestUseBy: string | null;
    }
  | { admitted: false; refusals: { containerId: string; message: string }[] };

/**
 * Whether bottles may be poured together. A blend is kept and used on many clients, so its parents are admitted as to a
 * tray: nothing held, expired, open too long or kept for practice; and only from what is opened, so that its opened life
 * is known. The blend lasts no longer than the first of its parents.
 *
 * @param at ISO 8601 instant of blending
 * @param timeZone IANA time zone of the studio
 */
export function admitToBlend(
  parents: readonly BlendParentFacts[],
  at: string,
  timeZone: string,
): BlendAdmission {
  const refusals: { containerId: string; message: string }[] = [];
  for (const parent of parents) {
    const life = judgeShelfLife(parent, at, timeZone);
    const reason = refusalReason(parent, life.status);
    if (reason !== null) {
      refusals.push({ containerId: parent.containerId, message: `${parent.label} ${reason}` });
    }
  }
  if (refusals.length > 0) return { admitted: false, refusals };
  return { admitted: true, latestUseBy: latestBlendUseBy(parents, timeZone) };
}

/** The earliest last usable day of what is poured together, as it stands opened; null when nothing has one. */
export function latestBlendUseBy(parents: readonly ContainerLifeFacts[], timeZone: string): string | null {
  let latest: string | null = null;
  for (const parent of parents) {
    const { lastDay } = lastUsableDay({ ...parent, timeZone });
    if (outlasts(latest, lastDay)) latest = lastDay;
  }
  return latest;
}

/** Whether a use-by, null for none, is later than a last usable day. */
export function outlasts(useBy: string | null, lastDay: string | null): boolean {
  return lastDay !== null && (useBy === null || isBefore(lastDay, useBy));
}

/**
 * The use-by of a blend: what a person chose when it is not later than the parents allow, else the latest they allow.
 *
 * @param chosen ISO `YYYY-MM-DD`; null when nothing was chosen
 * @param blendedOn the studio's local day, ISO `YYYY-MM-DD`
 */
export function blendUseBy(
  chosen: string | null,
  latestUseBy: string | null,
  blendedOn: string,
): { useBy: string | null } | { message: string } {
  if (chosen === null) return { useBy: latestUseBy };
  if (latestUseBy !== null && isBefore(latestUseBy, chosen)) {
    return {
      message: `The use-by date ${chosen} is later than the first of the pigments in it allows. Allowed is ${latestUseBy} at the latest; choose that day or an earlier one.`,
    };
  }
  if (isBefore(chosen, blendedOn)) {
    return {
      message: `The use-by date ${chosen} lies before the day of blending, ${blendedOn}. Check the date.`,
    };
  }
  return { useBy: chosen };
}

function refusalReason(parent: BlendParentFacts, status: string): string | null {
  if (!parent.isPigment) return 'is no pigment in a bottle. Only pigments and thinners are blended.';
  if (hasEnded(parent.state)) {
    return `is recorded as ${parent.state}. If it is still here, reverse the movement that ended it.`;
  }
  if (parent.holdKinds.includes('recall')) return 'is recalled. Put it aside and take another.';
  if (parent.holdKinds.length > 0) return 'is on hold. Take another, or have it released first.';
  if (parent.state === 'practice only') return 'is kept for practice only. Take another.';
  if (status === 'expired') return 'is past its use-by date. Put it aside and take another.';
  if (status === 'open too long') return 'is open too long. Put it aside and take another.';
  if (parent.state === 'sealed') return 'is recorded as sealed. Record first when it was opened.';
  return null;
}

function isBefore(one: string, other: string): boolean {
  return Temporal.PlainDate.compare(one, other) < 0;
}
