/** No request needs more; deeper ones would exhaust the stack of whatever walks them. */
const maximumDepth = 16;

/** Names that every object has: who looks for such a field finds it also where nobody sent one. */
const inherited: ReadonlySet<string> = new Set([
  ...Object.getOwnPropertyNames(Object.prototype),
  'prototype',
]);

/**
 * What no body may be, whatever it is for: something else than an object, nested without end, or with fields that are
 * named like what every object has. Validation passes over some of that in silence.
 * @param body undefined when there is none
 * @returns in words; undefined when nothing is wrong
 */
export function bodyFault(body: unknown): string | undefined {
  if (body !== undefined && (body === null || typeof body !== 'object' || Array.isArray(body))) {
    return 'The body is no JSON object; every body here is one. Look at what made it.';
  }
  let level: unknown[] = [body];
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > maximumDepth) {
      return `The body is nested more than ${maximumDepth} levels deep; no request here is. Look at what made it.`;
    }
    const objects = level.filter((value) => value !== null && typeof value === 'object') as object[];
    const name = objects.flatMap((value) => Object.keys(value)).find((key) => inherited.has(key));
    if (name !== undefined) {
      return `The body has a field named "${name}"; no request here has. Look at what made it.`;
    }
    level = objects.flatMap((value) => Object.values(value));
  }
  return undefined;
}
