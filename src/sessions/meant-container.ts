import { chooseContainer } from '../stock/first-expired.js';
import { asCandidate, type TrayThing } from './tray-thing.js';

export type MeantContainer =
  | { kind: 'this'; thing: TrayThing }
  /** Several are open: only the person knows which one is in hand. */
  | { kind: 'ask'; things: TrayThing[] }
  | { kind: 'none' };

/**
 * A maker's symbol, or a typed code, names a lot and not a container. Meant is the opened container, else the
 * first-expiring sealed one; it asks when several are open. When nothing of the lot may be used, the one that would have
 * been taken is returned all the same, so that the refusal can say why.
 *
 * @param things the containers of the lots that were named
 * @param at ISO 8601 instant of the scan
 * @param timeZone IANA time zone of the studio
 */
export function meantContainer(things: readonly TrayThing[], at: string, timeZone: string): MeantContainer {
  const choice = chooseContainer(things.map(asCandidate), at, timeZone);
  if ('chosen' in choice) return { kind: 'this', thing: choice.chosen.thing };
  if ('ask' in choice) return { kind: 'ask', things: choice.ask.map((candidate) => candidate.thing) };
  const [present] = choice.none.filter(({ candidate }) => !candidate.finished);
  const meant = present ?? choice.none[0];
  return meant ? { kind: 'this', thing: meant.candidate.thing } : { kind: 'none' };
}
