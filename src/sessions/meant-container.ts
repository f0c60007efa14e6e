import { chooseContainer } from '../stock/first-expired.js';
import type { Reason } from './tray-rules.js';
import { asCandidate, type TrayThing } from './tray-thing.js';

/** What a symbol or a pick names. */
export interface Named {
  /** More than one only for a typed code that stands on several products. */
  productIds: string[];
  /** Null when only the product is named. */
  lotIds: string[] | null;
  /** Given when the container itself is named: by its label, or by picking it. */
  containerId: string | null;
}

export type Meant =
  | { kind: 'this'; thing: TrayThing }
  /** Only the person knows. */
  | { kind: 'ask'; reason: Reason; choices: TrayThing[] }
  /** The container named is none of those that could be meant. */
  | { kind: 'another container' }
  /** Nothing of the product is here. */
  | { kind: 'none' };

/**
 * Which container a scan means. A label means its container. A maker's symbol or a typed code names a lot: meant is the
 * opened container, else the first-expiring sealed one, and it asks when several are open. A symbol with only a product
 * asks for the lot, of those that may be used. When nothing of a lot may be used, the one that would have been taken is
 * returned all the same, so that the refusal can say why.
 *
 * @param things the containers of the products that were named
 * @param at ISO 8601 instant of the scan
 * @param timeZone IANA time zone of the studio
 */
export function meantContainer(
  named: Named,
  things: readonly TrayThing[],
  at: string,
  timeZone: string,
): Meant {
  const { lotIds, containerId } = named;
  const ofLots = things.filter((thing) => lotIds === null || lotIds.includes(thing.lotId));
  if (containerId !== null) {
    const thing = ofLots.find((candidate) => candidate.containerId === containerId);
    return thing ? { kind: 'this', thing } : { kind: 'another container' };
  }
  const choice = chooseContainer(ofLots.map(asCandidate), at, timeZone);
  if (lotIds === null) {
    if ('none' in choice) return { kind: 'none' };
    const excluded = new Set(unusable(ofLots, at, timeZone));
    return askLot(ofLots.filter((thing) => !excluded.has(thing)));
  }
  if (new Set(ofLots.map((thing) => thing.productId)).size > 1) return askLot(ofLots);
  if ('chosen' in choice) return { kind: 'this', thing: choice.chosen.thing };
  if ('ask' in choice) return askContainer(choice.ask.map((candidate) => candidate.thing));
  const [present] = choice.none.filter(({ candidate }) => !candidate.finished);
  const meant = present ?? choice.none[0];
  return meant ? { kind: 'this', thing: meant.candidate.thing } : { kind: 'none' };
}

function unusable(things: readonly TrayThing[], at: string, timeZone: string): TrayThing[] {
  return things.filter((thing) => 'none' in chooseContainer([asCandidate(thing)], at, timeZone));
}

function askLot(choices: TrayThing[]): Meant {
  const reason: Reason = {
    code: 'which lot?',
    message: 'This names a product but not one lot. Pick the lot that is printed on what is in hand.',
    facts: { choices: choices.length },
  };
  return { kind: 'ask', reason, choices };
}

function askContainer(choices: TrayThing[]): Meant {
  const reason: Reason = {
    code: 'which container?',
    message: `${choices.length} bottles of this lot are open. Scan the label of the one in hand, or pick it.`,
    facts: { choices: choices.length },
  };
  return { kind: 'ask', reason, choices };
}
