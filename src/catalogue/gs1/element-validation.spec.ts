import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryElements, elementsFor } from '../../../tests/support/arbitrary-elements.js';
import { applicationIdentifiers } from './application-identifiers.js';
import type { Element, PlacedElement } from './element.js';
import { validateElements } from './element-validation.js';

function codesOf(elements: readonly Element[]): string[] {
  const placed: PlacedElement[] = elements.map((element, index) => ({
    ...element,
    position: index + 1,
    positionInValue: () => index + 1,
  }));
  return validateElements(placed, 2026).map((error) => `${error.code} ${error.applicationIdentifier}`);
}

const gtin: Element = { applicationIdentifier: '01', value: '09506000134352' };

describe('validating elements', () => {
  it('lets every identifier of GS1 pass with valid content and all it requires', () => {
    for (const { identifier } of applicationIdentifiers) {
      fc.assert(
        fc.property(elementsFor(identifier), (elements) => {
          expect(codesOf(elements)).toEqual([]);
        }),
        { numRuns: 3 },
      );
    }
  });

  it('joins what two symbols on one box say: neither alone is enough, both together are', () => {
    const lot: Element = { applicationIdentifier: '10', value: 'AB' };
    expect(codesOf([lot])).toEqual(['missing-requisite 10']);
    expect(codesOf([gtin, lot])).toEqual([]);
  });

  it('names a pair that excludes each other once, whichever comes first', () => {
    const pair: Element[] = [
      { applicationIdentifier: '01', value: gtin.value },
      { applicationIdentifier: '03', value: gtin.value },
      { applicationIdentifier: '02', value: gtin.value },
      { applicationIdentifier: '37', value: '1' },
      { applicationIdentifier: '00', value: '095060001343500002' },
    ];
    expect(codesOf(pair)).toEqual([
      'excluded-pair 01',
      'excluded-pair 03',
      'excluded-pair 03',
      'excluded-pair 03',
      'excluded-pair 02',
    ]);
  });

  it('refuses an element one character too long or with a foreign character', () => {
    fc.assert(
      fc.property(arbitraryElements, fc.nat(), (elements, which) => {
        const index = which % elements.length;
        const spoil = (change: (value: string) => string): Element[] =>
          elements.map((element, place) =>
            place === index ? { ...element, value: change(element.value) } : element,
          );
        expect(codesOf(spoil((value) => value.padEnd(91, '0')))).not.toEqual([]);
        expect(codesOf(spoil((value) => `~${value.slice(1)}`))).not.toEqual([]);
        expect(codesOf(spoil(() => ''))).not.toEqual([]);
      }),
    );
  });
});
