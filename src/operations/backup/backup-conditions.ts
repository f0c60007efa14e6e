import type { OpenCondition } from '../../alerts/open-condition.js';
import { type BackupTimes, hoursAfter, isOverdue } from './next-backup.js';

export const backupConditionKinds = ['backup failed', 'backup overdue'] as const;

export interface FailedBackup {
  /** The instant at which it failed. */
  at: string;
  /** In a few words, such as `no space is left on the disk`. */
  cause: string;
}

export interface BackupFacts extends BackupTimes {
  /** The last failure that is known, whatever came after it; null when none is. */
  lastFailure: FailedBackup | null;
  /** When the service was started. */
  startedAt: string;
  /** Whether it was said already that one is overdue. */
  isToldOverdue: boolean;
}

/** How long a service that was off may take to make up for what was left out, before anything is said of it. */
const hoursToMakeUp = 1;

/**
 * What is to be said of the backups of a service, told to each of its studios: the last one failed, until there is a
 * good one again, and so much time has passed that at least one must have been left out.
 * @param now an instant
 */
export function backupConditions(facts: BackupFacts, studioId: string, now: string): OpenCondition[] {
  const { lastGoodAt, lastFailure, everyHours, startedAt, isToldOverdue } = facts;
  if (everyHours === 0) return [];
  const conditions: OpenCondition[] = [];
  const subject = { subjectKind: 'studio', subjectId: studioId };
  if (lastFailure !== null && (lastGoodAt === null || lastFailure.at > lastGoodAt)) {
    conditions.push({
      kind: 'backup failed',
      ...subject,
      severity: 'warning',
      facts: { cause: lastFailure.cause, lastGoodAt },
    });
  }
  const hadTime = now >= hoursAfter(startedAt, Math.min(hoursToMakeUp, everyHours));
  if (isOverdue(facts, now) && (hadTime || isToldOverdue)) {
    conditions.push({ kind: 'backup overdue', ...subject, severity: 'urgent', facts: { lastGoodAt } });
  }
  return conditions;
}
