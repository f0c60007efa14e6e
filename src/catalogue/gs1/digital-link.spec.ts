import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryElements } from '../../../tests/support/arbitrary-elements.js';
import { digitalLink } from '../../../tests/support/digital-link.js';
import { isDigitalLink, parseDigitalLink } from './digital-link.js';
import type { Element } from './element.js';

const today = '2026-03-01';
const gtin = '09506000134352';

function elementsIn(uri: string): string {
  const { elements, errors } = parseDigitalLink(uri, { today });
  expect(errors).toEqual([]);
  return elements.map((element) => `${element.applicationIdentifier}=${element.value}`).join(' ');
}

function errorsIn(uri: string): string[] {
  return parseDigitalLink(uri, { today }).errors.map(
    (error) => `${error.code} ${error.applicationIdentifier ?? '-'} at ${error.position}`,
  );
}

// GS1 Digital Link standard, URI syntax [P, by way of the dictionary's attributes].
describe('a Digital Link', () => {
  it.each([
    [`https://example.org/01/${gtin}`, `01=${gtin}`],
    [`HTTP://example.org:8080/01/${gtin}`, `01=${gtin}`],
    [
      `https://example.org/some/stem/01/${gtin}/22/2A/10/AB-1/21/X7?17=260131`,
      `01=${gtin} 22=2A 10=AB-1 21=X7 17=260131`,
    ],
    [`https://example.org/01/${gtin}/10/AB?17=260131&linkType=all&x#10=C`, `01=${gtin} 10=AB 17=260131`],
    [`https://example.org/01/${gtin}/235/TPX`, `01=${gtin} 235=TPX`],
    ['https://example.org/01/9506000134352/', `01=${gtin}`],
    ['https://example.org/01/95012346', '01=00000095012346'],
    [`https://example.org/414/9506000134352/254/A%2F1`, '414=9506000134352 254=A/1'],
    [`https://example.org/00/095060001343500002?02=${gtin}&37=12`, `00=095060001343500002 02=${gtin} 37=12`],
  ])('%s is read', (uri, expected) => {
    expect(elementsIn(uri)).toBe(expected);
  });

  it('takes + for a plus in the path and for a space in the query', () => {
    expect(elementsIn(`https://example.org/01/${gtin}/10/A+B`)).toBe(`01=${gtin} 10=A+B`);
    expect(errorsIn(`https://example.org/01/${gtin}?240=A+B`)).toEqual(['foreign-character 240 at 44']);
    expect(elementsIn(`https://example.org/01/${gtin}?240=A%2BB`)).toBe(`01=${gtin} 240=A+B`);
  });

  it('takes the rightmost key, so that a stem may look like one', () => {
    expect(elementsIn(`https://example.org/01/x/01/${gtin}`)).toBe(`01=${gtin}`);
  });

  it.each([
    [`https://example.org/01/${gtin}/10/AB/22/2A`, 'misplaced-qualifier 22 at 45'],
    [`https://example.org/01/${gtin}/22/2A/235/T`, 'misplaced-qualifier 235 at 45'],
    [`https://example.org/01/${gtin}/17/260131`, 'misplaced-qualifier 17 at 39'],
    [`https://example.org/01/${gtin}?10=AB`, 'misplaced-qualifier 10 at 39'],
    [`https://example.org/8006/${gtin}0102?254=AB`, 'not-a-data-attribute 254 at 45'],
    [`https://example.org/01/${gtin}?17=260131&17=260131`, 'repeated 17 at 49'],
    [`https://example.org/01/${gtin}?05=1`, 'unknown-identifier - at 39'],
    [`https://example.org/01/${gtin}/10/A%2`, 'not-an-escape 10 at 43'],
    [`https://example.org/01/09506000134353`, 'check-digit 01 at 37'],
    ['https://example.org/01/9506000134353', 'check-digit 01 at 36'],
    [`https://example.org/01/${gtin}?17=261301`, 'date-or-month 17 at 44'],
    ['https://example.org/about', 'no-primary-key - at 1'],
    [`ftp://example.org/01/${gtin}`, 'no-primary-key - at 1'],
  ])('%s is refused: %s', (uri, expected) => {
    expect(errorsIn(uri)).toContain(expected);
  });

  it('is told from other web addresses by a key in its path', () => {
    expect(isDigitalLink(`https://example.org/01/${gtin}`)).toBe(true);
    expect(isDigitalLink('https://example.org/products/17')).toBe(false);
    expect(isDigitalLink(`https://example.org?01=${gtin}`)).toBe(false);
    expect(isDigitalLink(`example.org/01/${gtin}`)).toBe(false);
    expect(isDigitalLink('https:///01/x')).toBe(false);
  });
});

describe('any Digital Link', () => {
  it('gives back any valid elements that it can carry, in some order', () => {
    let carried = 0;
    fc.assert(
      fc.property(arbitraryElements, (elements) => {
        const uri = digitalLink(elements);
        if (uri === undefined) return;
        carried += 1;
        const reading = parseDigitalLink(uri, { today });
        expect(reading.errors).toEqual([]);
        expect(sorted(reading.elements)).toEqual(sorted(elements));
      }),
      { numRuns: 500 },
    );
    expect(carried).toBeGreaterThan(200);
  });

  it('never throws on any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        parseDigitalLink(text, { today });
        parseDigitalLink(`https://example.org/01/${gtin}/10/${text}?17=${text}&${text}`, { today });
      }),
    );
  });
});

function sorted(elements: readonly Element[]): Element[] {
  return [...elements].sort((one, other) =>
    one.applicationIdentifier < other.applicationIdentifier ? -1 : 1,
  );
}
