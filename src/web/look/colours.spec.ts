import { describe, expect, it } from 'vitest';
import { dark, light, petrol } from './colours.js';

/** Relative luminance by WCAG 2.2, from `#rrggbb`. */
function luminance(colour: string): number {
  const channels = [1, 3, 5].map((start) => {
    const value = Number.parseInt(colour.slice(start, start + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  const [red = 0, green = 0, blue = 0] = channels;
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [high = 0, low = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (high + 0.05) / (low + 0.05);
}

describe('the formula', () => {
  it('gives 21 for black on white, and 4.54 for #767676 on white, as WCAG 2.2 counts [M]', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });
});

describe.each([
  ['light', light],
  ['dark', dark],
])('%s colours', (_, colours) => {
  const read: [keyof typeof light, keyof typeof light][] = [
    ['ink', 'paper'],
    ['ink', 'sheet'],
    ['faint', 'paper'],
    ['faint', 'sheet'],
    ['link', 'paper'],
    ['link', 'sheet'],
    ['fault', 'paper'],
    ['fault', 'sheet'],
    ['fault', 'faultWash'],
    ['ink', 'faultWash'],
    ['care', 'sheet'],
    ['good', 'sheet'],
    ['good', 'goodWash'],
    ['ink', 'goodWash'],
    ['faint', 'goodWash'],
    ['onBand', 'band'],
  ];

  it.each(read)('let %s be read on %s: at least 4.5 to 1 (WCAG 2.2, 1.4.3)', (text, ground) => {
    expect(contrast(colours[text], colours[ground])).toBeGreaterThanOrEqual(4.5);
  });

  it.each(['paper', 'sheet'] as const)('let the edge of a field be seen on %s: 3 to 1 (1.4.11)', (ground) => {
    expect(contrast(colours.edge, colours[ground])).toBeGreaterThanOrEqual(3);
  });
});

it('lets white be read on a filled button, by day and by night', () => {
  for (const shade of [petrol[7], petrol[6]]) {
    expect(contrast(light.sheet, shade)).toBeGreaterThanOrEqual(4.5);
  }
});
