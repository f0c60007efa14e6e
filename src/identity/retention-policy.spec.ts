import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RetentionSettings, retentionFault, retentionPolicy } from './retention-policy.js';
import { retentionChoices, retentionPresets } from './retention-presets.js';

const settings = (given: Partial<RetentionSettings>): RetentionSettings => ({
  preset: null,
  years: null,
  law: null,
  ...given,
});

const anySettings = fc.record({
  preset: fc.option(fc.constantFrom(...retentionChoices)),
  years: fc.option(fc.integer({ min: 0, max: 100 })),
  law: fc.option(fc.constantFrom('Hygiene act §7', 'Trade rule 12')),
});

describe('how long a studio keeps its records', () => {
  it('is not known until the studio has chosen', () => {
    expect(retentionPolicy(settings({}))).toBeNull();
    expect(retentionFault(settings({}))).toBeNull();
  });

  it('is that of a preset, with its source as the law', () => {
    expect(retentionPolicy(settings({ preset: 'South Dakota' }))).toEqual({
      years: 2,
      law: 'ARSD 44:12:01:15',
    });
  });

  it('may be longer than the preset, but not shorter', () => {
    expect(retentionPolicy(settings({ preset: 'South Dakota', years: 10 }))?.years).toBe(10);
    expect(retentionFault(settings({ preset: 'South Dakota', years: 10 }))).toBeNull();
    expect(retentionFault(settings({ preset: 'South Dakota', years: 1 }))).toEqual({
      field: 'retentionYears',
      message:
        'is 1, but "South Dakota" asks for at least 2 (ARSD 44:12:01:15). Keep them as long, or choose "own" if another rule binds you',
    });
  });

  it('is the studio’s own number, by a law that it names or by none', () => {
    expect(retentionPolicy(settings({ preset: 'own', years: 7, law: 'Hygiene act §7' }))).toEqual({
      years: 7,
      law: 'Hygiene act §7',
    });
    expect(retentionPolicy(settings({ preset: 'own', years: 7 }))).toEqual({ years: 7, law: null });
    expect(retentionFault(settings({ preset: 'own' }))?.field).toBe('retentionYears');
  });

  it('is never decided by what was not verified: the studio says the years', () => {
    expect(retentionFault(settings({ preset: 'Victoria' }))).toMatchObject({
      field: 'retentionYears',
      message: expect.stringContaining('not verified against the official text'),
    });
    expect(retentionFault(settings({ preset: 'Victoria', years: 1 }))).toBeNull();
  });

  it('takes no years and no law without a preset, and no other law beside one', () => {
    expect(retentionFault(settings({ years: 3 }))?.field).toBe('retentionYears');
    expect(retentionFault(settings({ law: 'Hygiene act §7' }))?.field).toBe('retentionLaw');
    expect(retentionFault(settings({ preset: 'Howell', law: 'Hygiene act §7' }))?.field).toBe('retentionLaw');
  });

  it('is at least the preset’s for whatever is accepted, and known whenever something is chosen', () => {
    fc.assert(
      fc.property(anySettings, (given) => {
        if (retentionFault(given) !== null) return;
        const policy = retentionPolicy(given);
        expect(policy === null).toBe(given.preset === null);
        const floor = retentionPresets.find(({ id }) => id === given.preset)?.years ?? 0;
        if (policy !== null) expect(policy.years).toBeGreaterThanOrEqual(Math.max(floor, given.years ?? 0));
      }),
    );
  });
});
