/**
 * The three characters by which a reader says what kind of symbol it read (ISO/IEC 15424): a closing square
 * bracket, a letter for the symbology, a digit or letter for its variant. They come beside the text, or, from
 * hand-held scanners, in front of it.
 */

/** What a symbol of that kind holds. `said nothing` when there is no identifier: the text may be typed. */
export type SymbolContent = 'elements' | 'product number' | 'anything' | 'said nothing';

export type IdentifiedText = {
  readonly symbologyIdentifier: string | undefined;
  readonly content: SymbolContent;
  /** The text without an identifier in front. */
  readonly text: string;
};

/** GS1-128, GS1 DataBar, GS1 DataMatrix, GS1 QR Code, GS1 DotCode. GS1 General Specifications [P]. */
const carryElements = new Set([']C1', ']e0', ']d2', ']Q3', ']J1']);

/** EAN-13 and UPC, EAN-8, and ITF with a check digit [P]. */
const carryProductNumber = new Set([']E0', ']E4', ']I1']);

const pattern = /^\][A-Za-z][0-9A-Za-z]/;

/**
 * Tells the identifier from the text. One in front of the text is always taken off, since GS1 data cannot begin
 * with a square bracket; when the reader also gave one beside the text, that one counts. An identifier of
 * another shape is ignored.
 */
export function takeSymbologyIdentifier(text: string, given: string | undefined): IdentifiedText {
  const inFront = pattern.exec(text)?.[0];
  const beside = given !== undefined && given.length === 3 && pattern.test(given) ? given : undefined;
  const symbologyIdentifier = beside ?? inFront;
  return {
    symbologyIdentifier,
    content: contentOf(symbologyIdentifier),
    text: inFront === undefined ? text : text.slice(inFront.length),
  };
}

function contentOf(symbologyIdentifier: string | undefined): SymbolContent {
  if (symbologyIdentifier === undefined) return 'said nothing';
  if (carryElements.has(symbologyIdentifier)) return 'elements';
  if (carryProductNumber.has(symbologyIdentifier)) return 'product number';
  return 'anything';
}
