import { describe, expect, it } from 'vitest';
import { overridesOf, standingWithout } from './overrides.js';

describe('closing although something stands against it', () => {
  const obstacles = ['clients not told', 'containers not found'] as const;

  it('takes a reason for each obstacle, and blanks are none', () => {
    const reasons = { 'clients not told': ' nobody answers ', 'containers not found': '  ' };
    expect(overridesOf(obstacles, reasons)).toEqual([
      { obstacle: 'clients not told', reason: 'nobody answers' },
    ]);
    expect(standingWithout(obstacles, reasons)).toEqual(['containers not found']);
    expect(standingWithout(obstacles, {})).toEqual(obstacles);
  });

  it('leaves out a reason for what was mended meanwhile', () => {
    expect(overridesOf([], { 'clients not told': 'nobody answers' })).toEqual([]);
  });
});
