import type { MixView } from '../../sessions/mixes.views.js';

/** A press that was not answered yet: a cup that is begun, or what is dropped into one; negative to take a slip back. */
export type MixPress = { id: string; occurredAt: string } & (
  | { begins: string }
  | { mixId: string; containerId: string; drops: number }
  | { mixId: string; containerId: string; microlitres: number }
);

export interface ShownPart {
  containerId: string;
  name: string;
  /** Null when any of it was given as a volume. */
  drops: number | null;
  /** An estimate; null as long as the service has not told it. */
  microlitres: number | null;
}

export interface ShownMix {
  id: string;
  label: string;
  parts: ShownPart[];
}

/**
 * The mixes as they will be when everything pressed has arrived, so that the running total is right at once.
 * @param nameOf what to call a bottle by its container
 */
export function shownMixes(
  mixes: readonly MixView[],
  waiting: readonly MixPress[],
  nameOf: (containerId: string) => string,
): ShownMix[] {
  const shown: ShownMix[] = mixes.map(({ id, label, parts }) => ({
    id,
    label,
    parts: parts.map(({ containerId, drops, microlitres }) => ({
      containerId,
      name: nameOf(containerId),
      drops,
      microlitres,
    })),
  }));
  for (const press of waiting) {
    if ('begins' in press) {
      // The service may have told of it already.
      if (!shown.some(({ id }) => id === press.id)) {
        shown.push({ id: press.id, label: press.begins, parts: [] });
      }
      continue;
    }
    const mix = shown.find(({ id }) => id === press.mixId);
    if (!mix) continue;
    const { containerId } = press;
    const part = mix.parts.find((each) => each.containerId === containerId);
    if (part) add(part, press);
    else {
      const none = { containerId, name: nameOf(containerId), drops: 0, microlitres: null };
      mix.parts.push(add(none, press));
    }
  }
  return shown;
}

function add(part: ShownPart, press: { drops: number } | { microlitres: number }): ShownPart {
  const { drops, microlitres } = part;
  if ('microlitres' in press) {
    part.microlitres = (microlitres ?? 0) + press.microlitres;
    part.drops = null;
    return part;
  }
  const ofOne = drops === null || drops === 0 || microlitres === null ? null : microlitres / drops;
  part.drops = drops === null ? null : drops + press.drops;
  part.microlitres = ofOne === null ? null : Math.round((microlitres ?? 0) + ofOne * press.drops);
  return part;
}

/** Of all parts together; null where it is not known of one. */
export function totalOf(mix: ShownMix): { drops: number | null; microlitres: number | null } {
  return {
    drops: sum(mix.parts.map((part) => part.drops)),
    microlitres: sum(mix.parts.map((part) => part.microlitres)),
  };
}

function sum(amounts: readonly (number | null)[]): number | null {
  return amounts.reduce((total, amount) => (total === null || amount === null ? null : total + amount), 0);
}
