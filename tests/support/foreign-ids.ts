import { randomBytes } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';
import { checkDigit } from '../../src/catalogue/gs1/check-digit.js';
import { labelCodeRandomBytes, makeLabelCode } from '../../src/catalogue/own-label.js';
import type { ApiRoute } from './api-document.js';
import type { Answer } from './service.js';
import type { WalkedStudio } from './walk.js';

/** What an id is called in addresses, going by what a studio was seen to have. */
export function kindsOf({ ids }: WalkedStudio, id: string): string[] {
  return [...ids].filter(([, known]) => known.has(id)).map(([kind]) => kind);
}

/** The ids of a kind that one studio has and another has not; what belongs to a common chain is in both. */
export function foreignIds(other: WalkedStudio, mine: WalkedStudio, kind: string): string[] {
  return [...(other.ids.get(kind) ?? [])].filter((id) => !isKnown(mine, id));
}

/** One of them. */
export function foreignId(other: WalkedStudio, mine: WalkedStudio, kind: string): string | undefined {
  return [...(other.ids.get(kind) ?? [])].find((id) => !isKnown(mine, id));
}

function isKnown({ ids }: WalkedStudio, id: string): boolean {
  return [...ids.values()].some((known) => known.has(id));
}

/** An id that stands for nothing, of the kind of another. */
export function unknownLike(id: string): string {
  if (/^[0-9a-f-]{36}$/.test(id)) return uuidv7();
  if (/^\d{14}$/.test(id)) {
    const digits = `0950${randomBytes(5).readUIntBE(0, 5) % 1e9}`.padEnd(13, '0');
    return digits + checkDigit(digits);
  }
  return makeLabelCode(randomBytes(labelCodeRandomBytes));
}

/** An answer in words, without what differs by which id was tried. */
export function told({ status, headers, body }: Answer, tried: string): string {
  const text = JSON.stringify(body).replaceAll(tried, '‹tried›');
  return `${status} ${headers.get('content-type')} ${text}`;
}

/** The values that stand in an address of a route, by their names. */
export function valuesIn(route: ApiRoute, address: string): Record<string, string> {
  const pattern = new RegExp(`^${route.path.replace(/\{[^}]+\}/g, '([^/]+)')}$`);
  const [, ...found] = pattern.exec(new URL(address).pathname) ?? [];
  return Object.fromEntries(
    route.pathParameters.map((name, index) => [name, decodeURIComponent(found[index] ?? '')]),
  );
}
