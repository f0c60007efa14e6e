/** A value somewhere in a body. */
export interface PlacedValue {
  /** Keys from the outside inwards; elements of lists by their number. */
  at: (string | number)[];
  value: unknown;
}

/** Every value of a body that holds no further ones. */
export function placedValues(body: unknown, at: (string | number)[] = []): PlacedValue[] {
  if (Array.isArray(body)) return body.flatMap((item, index) => placedValues(item, [...at, index]));
  if (body === null || typeof body !== 'object') return [{ at, value: body }];
  return Object.entries(body).flatMap(([key, value]) => placedValues(value, [...at, key]));
}

/** A copy of a body with another value at one place; left out when it is undefined. */
export function withValue(
  body: unknown,
  [key, ...rest]: readonly (string | number)[],
  value: unknown,
): unknown {
  if (key === undefined) return value;
  if (Array.isArray(body))
    return body.map((item, index) => (index === key ? withValue(item, rest, value) : item));
  const fields = body as Record<string, unknown>;
  return { ...fields, [key]: withValue(fields[key], rest, value) };
}

/** As the places of the document are named: `lines.*.productId`. */
export function placeName(at: readonly (string | number)[]): string {
  return at.map((key) => (typeof key === 'number' ? '*' : key)).join('.');
}
