/** The second that is being counted: when it began, in milliseconds since the epoch, and how many began in it. */
export interface RateWindow {
  since: number;
  begun: number;
}

export const windowMilliseconds = 1_000;

/**
 * Whether one more may begin, with the window it then stands in, or how long to wait before asking again. A window
 * begins with the first of it, as BullMQ counts; a clock that was set back begins a new one.
 */
export function begin(
  window: RateWindow,
  now: number,
  perSecond: number,
): { window: RateWindow } | { waitMilliseconds: number } {
  const isOver = now >= window.since + windowMilliseconds || now < window.since;
  if (isOver) return { window: { since: now, begun: 1 } };
  if (window.begun < perSecond) return { window: { ...window, begun: window.begun + 1 } };
  return { waitMilliseconds: window.since + windowMilliseconds - now };
}
