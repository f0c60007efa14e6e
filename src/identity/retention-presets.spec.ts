import { describe, expect, it } from 'vitest';
import { retentionChoices, retentionPresets } from './retention-presets.js';

const named = (id: string) => retentionPresets.find((preset) => preset.id === id);

describe('the presets of retention', () => {
  // NEHA Body Art Model Code, March 2024, §6.5 [P]; ARSD 44:12:01:15 [P]; the rules of Albuquerque and Howell [P].
  it.each([
    ['NEHA model code', 3],
    ['South Dakota', 2],
    ['Albuquerque', 3],
    ['Howell', 5],
  ])('have for %s the years of its official text', (id, years) => {
    expect(named(id)).toMatchObject({ years, howSure: 'P' });
  });

  // Victoria, Australia: 12 months [M].
  it('say of what was not verified that it was not', () => {
    expect(named('Victoria')).toMatchObject({ years: 1, howSure: 'M' });
    for (const { howSure, source } of retentionPresets) {
      expect(source.includes('not verified'), source).toBe(howSure === 'M');
    }
  });

  it('can all be chosen, and the studio’s own beside them', () => {
    expect(retentionChoices).toEqual([...retentionPresets.map(({ id }) => id), 'own']);
    expect(new Set(retentionChoices).size).toBe(retentionChoices.length);
  });
});
