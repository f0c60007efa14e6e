/**
 * From what a scanner sent or a person typed to what it says: the one entry to barcode reading.
 *
 * Guarantees: no text makes it throw; text beyond 4,096 characters is refused unread; nothing is guessed that a
 * check does not bear out; every refusal names the identifier, the position and what is allowed.
 *
 * How the kind is decided, in this order:
 * 1. A symbol that carries elements (]C1 ]e0 ]d2 ]Q3 ]J1) is a raw element string and nothing else.
 * 2. A product number symbol: ]E0 has 13 digits (12 from some readers), ]E4 has 8, ]I1 has 14. An ITF symbol of
 *    another length is text. UPC-E must come expanded: its 8 digits are not an EAN-8.
 * 3. Any other symbol, or no word of one:
 *    - a web address with a GS1 key in its path is a Digital Link, one without is text;
 *    - text that begins with "(" and a digit is a bracketed element string;
 *    - twelve characters with a valid own label check are an own label. They begin with a letter, so they
 *      cannot be a GTIN;
 *    - 8, 12, 13 or 14 digits with a right check digit are a product number. With a wrong one, 13 and 14 digits
 *      are refused, 8 and 12 are text: dates and lot codes are that long;
 *    - when no symbol is named, text with a separator in it is a raw element string (nobody can type a
 *      separator), and so is 01 with a right GTIN behind it, as scanners set to hide the identifier send it;
 *    - everything else is text, perhaps a lot code.
 *    Where a symbol is named and its text only looks like elements but is not valid, it is text, with the doubts.
 * An element string with a valid own label code as AI 91 is an own label.
 */
import { Temporal } from 'temporal-polyfill';
import { gtin14 } from './gs1/check-digit.js';
import { isDigitalLink, parseDigitalLink } from './gs1/digital-link.js';
import { type Element, type ElementError, elementError } from './gs1/element.js';
import { type ElementFacts, factsOf } from './gs1/element-facts.js';
import {
  type ElementStringReading,
  type ElementStringStyle,
  parseElementString,
  separator,
} from './gs1/element-string.js';
import { checkLabelCode } from './own-label.js';
import { type IdentifiedText, takeSymbologyIdentifier } from './symbology-identifier.js';

export const maximumSymbolCharacters = 4096;

export type SymbolInput = {
  /** What the scanner sent or the person typed. Line ends and spaces around it are dropped. */
  readonly text: string;
  /** Such as "]d2", when the reader tells it apart from the text. */
  readonly symbologyIdentifier?: string;
};

/** `text` is the input without spaces around it and without symbology identifier. */
type WhatWasRead = { readonly text: string; readonly symbologyIdentifier?: string };

export type SymbolReading = WhatWasRead &
  (
    | ({
        readonly kind: 'own label';
        readonly code: string;
        readonly elements: readonly Element[];
      } & ElementFacts)
    | ({ readonly kind: 'gs1'; readonly elements: readonly Element[] } & ElementFacts)
    | { readonly kind: 'product only'; readonly gtin14: string }
    | {
        readonly kind: 'plain text';
        /** Why it is not what it looks like; empty for text that looks like nothing else. */
        readonly doubts: readonly ElementError[];
      }
    | {
        readonly kind: 'invalid';
        readonly errors: readonly ElementError[];
        /** What could be taken apart: with a requisite on a second symbol, join both and validate again. */
        readonly elements: readonly Element[];
      }
  );

/**
 * Reads a symbol or typed text. `today` is YYYY-MM-DD; its year decides the century of dates.
 * No text makes it throw; a `today` that is no date does (RangeError): a caller's mistake.
 */
export function readSymbol(input: SymbolInput, today: string): SymbolReading {
  if (input.text.length > maximumSymbolCharacters) return refuseLength(input.text);
  const trimmed = input.text.trim();
  const identified = takeSymbologyIdentifier(trimmed, input.symbologyIdentifier);
  const leadingSpaces = input.text.length - input.text.trimStart().length;
  const charactersBefore = leadingSpaces + trimmed.length - identified.text.length;
  return new Reader(identified, today, charactersBefore).read();
}

/** Reads one text; it holds what every step needs to know. */
class Reader {
  private readonly text: string;

  constructor(
    private readonly identified: IdentifiedText,
    private readonly today: string,
    private readonly charactersBefore: number,
  ) {
    this.text = identified.text;
  }

  read(): SymbolReading {
    if (this.text === '') return this.invalid([this.fault('empty', 'a symbol, or a text typed by hand')]);
    if (this.identified.content === 'elements') return this.elements(this.parse('raw'), 'invalid');
    if (this.identified.content === 'product number') return this.productSymbol();
    const named = this.identified.content === 'anything';
    const otherwise = named ? 'plain text' : 'invalid';
    if (isDigitalLink(this.text)) return this.elements(this.parseLink(), otherwise);
    if (/^\(\d/.test(this.text)) return this.elements(this.parse('bracketed'), otherwise);
    const label = checkLabelCode(this.text);
    if (label.ok) return { ...this.whatWasRead(), kind: 'own label', code: label.code, elements: [] };
    if (/^(\d{8}|\d{12,14})$/.test(this.text)) return this.bareDigits();
    if (!named && this.text.includes(separator)) return this.elements(this.parse('raw'), 'invalid');
    const gtin = /^01(\d{14})/.exec(this.text)?.[1];
    if (!named && gtin !== undefined && gtin14(gtin) !== undefined) {
      return this.elements(this.parse('raw'), 'plain text');
    }
    return this.plainText([]);
  }

  private productSymbol(): SymbolReading {
    const { symbologyIdentifier } = this.identified;
    const lengths = symbologyIdentifier === ']E4' ? [8] : symbologyIdentifier === ']I1' ? [14] : [12, 13];
    const rightLength = /^\d+$/.test(this.text) && lengths.includes(this.text.length);
    if (!rightLength && symbologyIdentifier === ']I1') return this.plainText([]);
    if (!rightLength) {
      const allowed = `${lengths.join(' or ')} digits in a symbol ${symbologyIdentifier}`;
      return this.invalid([this.fault('not-a-product-number', allowed)]);
    }
    return this.productOnly() ?? this.invalid([this.wrongCheckDigit()]);
  }

  private bareDigits(): SymbolReading {
    const product = this.productOnly();
    if (product) return product;
    const mayBeLotCode = this.text.length < 13 || this.identified.content === 'anything';
    return mayBeLotCode ? this.plainText([this.wrongCheckDigit()]) : this.invalid([this.wrongCheckDigit()]);
  }

  private productOnly(): SymbolReading | undefined {
    const gtin = gtin14(this.text);
    return gtin === undefined ? undefined : { ...this.whatWasRead(), kind: 'product only', gtin14: gtin };
  }

  private elements(reading: ElementStringReading, otherwise: 'invalid' | 'plain text'): SymbolReading {
    const { elements, errors } = reading;
    if (errors.length > 0) {
      return otherwise === 'invalid' ? this.invalid(errors, elements) : this.plainText(errors);
    }
    const facts = factsOf(elements, Temporal.PlainDate.from(this.today).year);
    const internal = elements.find((element) => element.applicationIdentifier === '91')?.value ?? '';
    const label = checkLabelCode(internal);
    // Our own symbols hold the code in capitals without hyphens; anything else in AI 91 is another company's.
    return label.ok && label.code === internal
      ? { ...this.whatWasRead(), ...facts, kind: 'own label', code: internal, elements }
      : { ...this.whatWasRead(), ...facts, kind: 'gs1', elements };
  }

  private parse(style: ElementStringStyle): ElementStringReading {
    return parseElementString(this.text, this.context(), style);
  }

  private parseLink(): ElementStringReading {
    return parseDigitalLink(this.text, this.context());
  }

  private context(): { today: string; charactersBefore: number } {
    return { today: this.today, charactersBefore: this.charactersBefore };
  }

  private plainText(doubts: readonly ElementError[]): SymbolReading {
    return { ...this.whatWasRead(), kind: 'plain text', doubts };
  }

  private invalid(errors: readonly ElementError[], elements: readonly Element[] = []): SymbolReading {
    return { ...this.whatWasRead(), kind: 'invalid', errors, elements };
  }

  private wrongCheckDigit(): ElementError {
    const position = this.charactersBefore + this.text.length;
    const allowed = 'the right check digit of a GTIN (weights 3, 1 from the right)';
    return elementError('check-digit', undefined, position, this.text.slice(-1), allowed);
  }

  private fault(code: ElementError['code'], allowed: string): ElementError {
    return elementError(code, undefined, this.charactersBefore + 1, this.text, allowed);
  }

  private whatWasRead(): WhatWasRead {
    const { symbologyIdentifier, text } = this.identified;
    return symbologyIdentifier === undefined ? { text } : { text, symbologyIdentifier };
  }
}

function refuseLength(text: string): SymbolReading {
  const position = maximumSymbolCharacters + 1;
  const allowed = `at most ${maximumSymbolCharacters} characters (here ${text.length})`;
  const error = elementError('text-too-long', undefined, position, text.slice(position - 1), allowed);
  return { kind: 'invalid', text: text.slice(0, maximumSymbolCharacters), errors: [error], elements: [] };
}
