import type { ContentCheckName } from './application-identifier-format.js';

/**
 * One element: an application identifier and its value, as GS1 symbols and Digital Link URIs carry them.
 * The value holds exactly the characters of the symbol, without separators, brackets or URI escapes.
 */
export type Element = { readonly applicationIdentifier: string; readonly value: string };

/** An element and where it was read. Positions count characters of the text from 1. */
export type PlacedElement = Element & {
  readonly position: number;
  /** The position of the character `offset` characters into the value. */
  readonly positionInValue: (offset: number) => number;
};

/** What can be wrong with elements; a content check that failed gives its own name. */
export type ElementErrorCode =
  | ContentCheckName
  | 'empty'
  | 'excluded-pair'
  | 'foreign-character'
  | 'missing-requisite'
  | 'misplaced-bracket'
  | 'misplaced-qualifier'
  | 'misplaced-separator'
  | 'no-primary-key'
  | 'not-a-product-number'
  | 'not-a-data-attribute'
  | 'not-an-escape'
  | 'repeated'
  | 'text-too-long'
  | 'unknown-identifier'
  | 'value-too-long'
  | 'value-too-short';

/**
 * One fault, as data. `position` counts characters of the text from 1; `seen` is made visible (a separator
 * reads <GS>) and cut to 40 characters; `message` puts all of it into one sentence for a person.
 */
export type ElementError = {
  readonly code: ElementErrorCode;
  readonly applicationIdentifier: string | undefined;
  readonly position: number;
  readonly seen: string;
  readonly allowed: string;
  readonly message: string;
};

export function elementError(
  code: ElementErrorCode,
  applicationIdentifier: string | undefined,
  position: number,
  seen: string,
  allowed: string,
): ElementError {
  const where = applicationIdentifier === undefined ? '' : `AI (${applicationIdentifier}), `;
  const visible = makeVisible(seen);
  const message = `${where}character ${position}: seen ${visible === '' ? 'nothing' : `"${visible}"`}, allowed is ${allowed}. Compare the label, then scan or type it again.`;
  return { code, applicationIdentifier, position, seen: visible, allowed, message };
}

const visibleLength = 40;

function makeVisible(text: string): string {
  const cut = text.length > visibleLength ? `${text.slice(0, visibleLength)}…` : text;
  return cut.replaceAll('\u001d', '<GS>').replace(/[\p{Cc}\p{Cf}\p{Cs}]/gu, (character) => {
    const codePoint = character.codePointAt(0) ?? 0;
    return `<U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}>`;
  });
}
