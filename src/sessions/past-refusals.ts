import { type SafetyRefusal, safetyRefusals } from './tray-rules.js';
import { type HoldFact, type RecordedContainer, trayThing } from './tray-thing.js';

/**
 * What stood against using a container at an instant gone by: its dates on that day, and the holds that stood then, not
 * those of today. When it became practice stock is not known; that it had expired by then is judged by its dates.
 *
 * @param holds those that stood at the instant
 * @param at ISO 8601 instant of the use
 * @param timeZone IANA time zone of the studio
 */
export function pastRefusals(
  container: RecordedContainer,
  holds: readonly HoldFact[],
  assumedOpenedLife: string | null,
  at: string,
  timeZone: string,
): SafetyRefusal[] {
  const thing = trayThing(container, assumedOpenedLife, []);
  const state = thing.openedAt === null ? 'sealed' : 'opened';
  return safetyRefusals({ ...thing, state, holds }, at, timeZone);
}
