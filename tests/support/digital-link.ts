import { findApplicationIdentifier } from '../../src/catalogue/gs1/application-identifiers.js';
import type { Element } from '../../src/catalogue/gs1/element.js';

/**
 * Elements as a Digital Link URI below https://example.org/id: the first that can be a primary key, its qualifiers in
 * their order, the rest in the query in the order given. Undefined when there is no key, or something that fits neither
 * place; then the URI would rightly be refused.
 */
export function digitalLink(elements: readonly Element[]): string | undefined {
  const sequencesOf = ({ applicationIdentifier }: Element) =>
    findApplicationIdentifier(applicationIdentifier)?.digitalLinkQualifiers;
  const key = elements.find(sequencesOf);
  if (!key) return undefined;
  // An equal repeat, harmless in an element string, is an error in a URI: the first one is written.
  const once = elements.filter(
    ({ applicationIdentifier }, index) =>
      index === elements.findIndex((other) => other.applicationIdentifier === applicationIdentifier),
  );
  const taken = (sequence: readonly string[]) =>
    sequence.flatMap((identifier) => once.find((one) => one.applicationIdentifier === identifier) ?? []);
  const sequences = sequencesOf(key) ?? [];
  const [qualifiers = []] = sequences.map(taken).sort((one, other) => other.length - one.length);
  const path = [key, ...qualifiers];
  const query = once.filter((element) => !path.includes(element));
  const carried = query.every(
    ({ applicationIdentifier }) =>
      findApplicationIdentifier(applicationIdentifier)?.digitalLinkAttribute &&
      !sequences.some((sequence) => sequence.includes(applicationIdentifier)),
  );
  if (!carried) return undefined;
  const pathText = path.map((one) => `/${one.applicationIdentifier}/${encode(one.value)}`).join('');
  const queryText = query.map((one) => `${one.applicationIdentifier}=${encode(one.value)}`).join('&');
  return `https://example.org/id${pathText}${queryText === '' ? '' : `?${queryText}`}`;
}

/** All but the unreserved characters of RFC 3986 are escaped. Values hold ASCII only. */
function encode(value: string): string {
  return value.replace(
    /[^A-Za-z0-9\-._~]/g,
    (character) => `%${character.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`,
  );
}
