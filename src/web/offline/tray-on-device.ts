import type { DayFacts } from '../../sessions/day-facts.js';
import { refusedNow } from '../../sessions/refused-now.js';
import type { TrayLineView, TrayView } from '../../sessions/tray.views.js';
import { trayLacking } from '../../sessions/tray-lacking.js';
import { trayThing } from '../../sessions/tray-thing.js';

/**
 * A tray as it lies by what this device knows.
 * @param facts with what has happened here since
 * @param at ISO 8601 instant: what may not be used any more says so
 * @returns undefined when the session is not one of the day
 */
export function trayOnDevice(facts: DayFacts, sessionId: string, at: string): TrayView | undefined {
  const session = facts.sessions.find(({ id }) => id === sessionId);
  if (!session) return undefined;
  const lines = facts.lines
    .filter((line) => line.sessionId === sessionId)
    .flatMap((line): TrayLineView[] => {
      const container = facts.containers.find(({ containerId }) => containerId === line.containerId);
      if (!container) return [];
      const thing = trayThing(container, facts.assumedOpenedLife, []);
      const { productId, lotId, containerId, label, labelCode, lotCode, stockForm, isPigment } = thing;
      return [
        {
          ...{ productId, lotId, containerId, label, labelCode, lotCode, stockForm, isPigment },
          ...{ id: line.id, pieces: line.pieces, knownBy: line.knownBy, admittedAt: line.admittedAt },
          state: 'on tray',
          settledAs: null,
          refusedNow: refusedNow(thing, at, facts.timeZone),
        },
      ];
    });
  return {
    sessionId,
    state: session.state,
    version: 0,
    lines,
    lacking: trayLacking(session.kitItems ?? [], lines, facts.pools),
  };
}
