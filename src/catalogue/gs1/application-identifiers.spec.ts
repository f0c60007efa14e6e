import { describe, expect, it } from 'vitest';
import {
  applicationIdentifiers,
  findApplicationIdentifier,
  identifierLength,
  matchesPattern,
  valueLengths,
} from './application-identifiers.js';

/** The format in the notation of the General Specifications: N14, X..20, [N4]. */
function formatOf(identifier: string): string {
  const { components = [] } = findApplicationIdentifier(identifier) ?? {};
  return components
    .map(({ characters, minimumLength, maximumLength, optional }) => {
      const length = minimumLength === maximumLength ? `${maximumLength}` : `..${maximumLength}`;
      return optional ? `[${characters}${length}]` : `${characters}${length}`;
    })
    .join(' ');
}

describe('the table of application identifiers', () => {
  it('holds as many of each kind as a separate count of the dictionary found [P]', () => {
    const count = (test: (entry: (typeof applicationIdentifiers)[number]) => boolean): number =>
      applicationIdentifiers.filter(test).length;
    // Counted line by line in the GS1 Barcode Syntax Dictionary itself, ranges expanded.
    expect(applicationIdentifiers).toHaveLength(541);
    expect(count((entry) => entry.predefinedLength)).toBe(337);
    expect(count((entry) => entry.digitalLinkAttribute)).toBe(525);
    expect(count((entry) => entry.digitalLinkQualifiers !== undefined)).toBe(16);
    expect(count((entry) => entry.requires.length > 0)).toBe(502);
    expect(count((entry) => entry.excludes.length > 0)).toBe(394);
  });

  // Formats as the General Specifications write them, from the dictionary [P].
  it.each([
    ['00', 'N18'],
    ['01', 'N14'],
    ['02', 'N14'],
    ['10', 'X..20'],
    ['11', 'N6'],
    ['12', 'N6'],
    ['13', 'N6'],
    ['15', 'N6'],
    ['16', 'N6'],
    ['17', 'N6'],
    ['20', 'N2'],
    ['21', 'X..20'],
    ['22', 'X..20'],
    ['235', 'X..28'],
    ['240', 'X..30'],
    ['241', 'X..30'],
    ['250', 'X..30'],
    ['30', 'N..8'],
    ['37', 'N..8'],
    ['400', 'X..30'],
    ['410', 'N13'],
    ['417', 'N13'],
    ['7003', 'N6 N4'],
    ['8004', 'X..30'],
    ['8005', 'N6'],
    ['90', 'X..30'],
    ['91', 'X..90'],
    ['99', 'X..90'],
    ['423', 'N3 [N3] [N3] [N3] [N3]'],
    ['8003', 'N1 N13 [X..16]'],
    ['8030', 'Z..90'],
  ])('gives (%s) the format %s', (identifier, format) => {
    expect(formatOf(identifier)).toBe(format);
  });

  it('names the requisites and exclusions a lot label lives by [P]', () => {
    for (const identifier of ['10', '11', '17', '21']) {
      expect(findApplicationIdentifier(identifier)?.requires).toContainEqual(['01']);
    }
    expect(findApplicationIdentifier('02')?.requires).toEqual([['37']]);
    expect(findApplicationIdentifier('37')?.requires).toEqual([
      ['00', '02'],
      ['00', '8026'],
    ]);
    expect(findApplicationIdentifier('250')?.requires).toContainEqual(['01', '21']);
    expect(findApplicationIdentifier('01')?.excludes).toEqual(['255', '37']);
    expect(findApplicationIdentifier('02')?.excludes).toEqual(['01', '03']);
  });

  it('lets a GTIN be followed in a Digital Link by 22, 10, 21 or by 235 [P]', () => {
    expect(findApplicationIdentifier('01')?.digitalLinkQualifiers).toEqual([['22', '10', '21'], ['235']]);
    expect(findApplicationIdentifier('00')?.digitalLinkQualifiers).toEqual([[]]);
    expect(findApplicationIdentifier('10')?.digitalLinkQualifiers).toBeUndefined();
  });

  it('has predefined lengths exactly under the prefixes 00-04, 11-20, 31-36 and 41 [P]', () => {
    const prefixes = new Set(
      applicationIdentifiers
        .filter((entry) => entry.predefinedLength)
        .map((entry) => entry.identifier.slice(0, 2)),
    );
    const expected = ['00', '01', '02', '03', '11', '12', '13', '15', '16', '17', '20'];
    expect([...prefixes].sort()).toEqual([...expected, '31', '32', '33', '34', '35', '36', '41']);
    for (const entry of applicationIdentifiers) {
      expect(prefixes.has(entry.identifier.slice(0, 2))).toBe(entry.predefinedLength);
    }
  });

  it('makes every identifier readable without brackets: two digits tell its length', () => {
    for (const { identifier } of applicationIdentifiers) {
      expect(identifierLength(identifier.slice(0, 2))).toBe(identifier.length);
    }
    expect(identifierLength('05')).toBeUndefined();
    expect(new Set(applicationIdentifiers.map((entry) => entry.identifier)).size).toBe(541);
  });

  it('lets only the last component vary, puts optional ones last, and gives predefined ones one length', () => {
    for (const entry of applicationIdentifiers) {
      const firstOptional = entry.components.findIndex((component) => component.optional);
      entry.components.forEach((component, index) => {
        const fixed = component.minimumLength === component.maximumLength;
        if (index < entry.components.length - 1) expect(fixed).toBe(true);
        if (firstOptional >= 0 && index > firstOptional) expect(component.optional).toBe(true);
      });
      const { minimum, maximum } = valueLengths(entry);
      if (entry.predefinedLength) expect(minimum).toBe(maximum);
      expect(maximum).toBeLessThanOrEqual(90);
    }
  });

  it('refers to nothing that is not in the table', () => {
    for (const entry of applicationIdentifiers) {
      const named = [
        ...entry.excludes,
        ...entry.requires.flat(),
        ...(entry.digitalLinkQualifiers ?? []).flat(),
      ];
      for (const pattern of named) {
        const known = applicationIdentifiers.some((other) => matchesPattern(other.identifier, pattern));
        expect(known, `(${entry.identifier}) names (${pattern})`).toBe(true);
      }
    }
  });

  it('matches n with any digit, and nothing of another length', () => {
    expect(matchesPattern('3105', '310n')).toBe(true);
    expect(matchesPattern('3105', '31nn')).toBe(true);
    expect(matchesPattern('3205', '31nn')).toBe(false);
    expect(matchesPattern('31', '31nn')).toBe(false);
    expect(matchesPattern('01', '01')).toBe(true);
  });
});
