/** A step of an alert as it is told live; never its facts. */
export interface LiveStep {
  sequence: number;
  alertId: string;
  kind: string;
  severity: 'notice' | 'warning' | 'urgent';
  event: string;
}

/** One server-sent event: HTML Living Standard, 9.2.6 [M]. JSON has no ends of lines, so its data is one line. */
export function liveEvent(
  name: 'connected' | 'alert' | 'missed' | 'ended',
  data: unknown,
  id?: number,
): string {
  const idLine = id === undefined ? '' : `id: ${id}\n`;
  return `${idLine}event: ${name}\ndata: ${JSON.stringify(data)}\n\n`;
}

/** Says nothing; it shows that the connection stands. */
export const heartbeat = ': here\n\n';

/**
 * From which step on a listener is told.
 *
 * @param lastEventId as the browser hands it back after an interruption; undefined: it listens for the first time
 * @param newest the number of the newest step of the studio; 0: there is none
 * @param most so many steps are caught up with
 * @returns the last step the listener knows, and whether it missed too many, or names one that is not here
 */
export function knownThrough(
  lastEventId: string | undefined,
  newest: number,
  most: number,
): { sequence: number; missed: boolean } {
  if (lastEventId === undefined || lastEventId === '') return { sequence: newest, missed: false };
  const last = /^\d{1,15}$/.test(lastEventId) ? Number(lastEventId) : Number.NaN;
  if (last <= newest && newest - last <= most) return { sequence: last, missed: false };
  return { sequence: newest, missed: true };
}
