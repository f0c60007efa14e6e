import { orderFirstExpired } from '../stock/first-expired.js';
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

/** What a person picked, beside a symbol or without one. */
export interface Pick {
  containerId?: string;
  lotId?: string;
  productId?: string;
}

/**
 * Narrows what a symbol or the first pick names to all that was picked. Whether a container is one of those named, and a
 * lot one of the product's, is told when it is looked for.
 *
 * @returns the field that contradicts what is named: another product, another lot, or another container than that of the
 * label
 */
export function narrowed(named: Named, pick: Pick): Named | { contradicts: keyof Pick } {
  const { containerId = named.containerId, lotId, productId } = pick;
  if (named.containerId !== null && containerId !== named.containerId) return { contradicts: 'containerId' };
  if (lotId !== undefined && named.lotIds !== null && !named.lotIds.includes(lotId)) {
    return { contradicts: 'lotId' };
  }
  if (productId !== undefined && !named.productIds.includes(productId)) return { contradicts: 'productId' };
  return {
    productIds: productId === undefined ? named.productIds : [productId],
    lotIds: lotId === undefined ? named.lotIds : [lotId],
    containerId,
  };
}

export type Meant =
  | { kind: 'this'; thing: TrayThing }
  /** Only the person knows. */
  | { kind: 'ask'; reason: Reason; choices: TrayThing[] }
  /** The container named is none of those that could be meant. */
  | { kind: 'another container' }
  /** Nothing of the product is here. */
  | { kind: 'none' };

/** So many choices fit on a screen and into an answer. */
const mostChoices = 50;

/**
 * Which container a scan means.
 * - A label means its container.
 * - A maker's symbol or a typed code names a lot. Meant is its opened container, whatever is to be said of that one, else
 *   the first-expiring sealed one. It asks when several are open, and when the open one may not be used but a sealed one
 *   may: nobody but the person knows which of them is in hand.
 * - It asks for the lot when a code stands on several, and when only the product is known, of those that may be used.
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
  const { order, excluded } = orderFirstExpired(ofLots.map(asCandidate), at, timeZone);
  const usable = order.map(({ thing }) => thing);
  if (lotIds === null) return usable.length === 0 ? { kind: 'none' } : askLot(usable);
  if (new Set(ofLots.map((thing) => thing.lotId)).size > 1) return askLot(ofLots);

  const unusable = excluded
    .filter(({ candidate }) => !candidate.finished)
    .map(({ candidate }) => candidate.thing);
  const open = [...usable, ...unusable].filter((thing) => thing.state === 'opened');
  const [onlyOpen] = open;
  if (open.length > 1) return askContainer(open);
  if (!onlyOpen) {
    const thing = usable[0] ?? unusable[0] ?? ofLots[0];
    return thing ? { kind: 'this', thing } : { kind: 'none' };
  }
  const [sealed] = usable.filter((thing) => thing !== onlyOpen);
  return unusable.includes(onlyOpen) && sealed
    ? askContainer([onlyOpen, sealed])
    : { kind: 'this', thing: onlyOpen };
}

/** One choice a lot: its container that is to be taken first. */
function askLot(things: readonly TrayThing[]): Meant {
  const first = new Map<string, TrayThing>();
  for (const thing of things) if (!first.has(thing.lotId)) first.set(thing.lotId, thing);
  const choices = [...first.values()].slice(0, mostChoices);
  const reason: Reason = {
    code: 'which lot?',
    message: 'This does not name one lot. Pick the lot that is printed on what is in hand.',
    facts: { choices: first.size },
  };
  return { kind: 'ask', reason, choices };
}

function askContainer(things: readonly TrayThing[]): Meant {
  const choices = things.slice(0, mostChoices);
  const reason: Reason = {
    code: 'which container?',
    message:
      'More than one bottle of this lot could be meant. Scan the label of the one in hand, or pick it.',
    facts: { choices: things.length },
  };
  return { kind: 'ask', reason, choices };
}
