import { describe, expect, it } from 'vitest';
import { changedFields, type GivenProductFields, productFields } from './product-fields.js';
import type { ProductKind } from './vocabulary.js';

function fieldsOf(kind: ProductKind, given: GivenProductFields) {
  const decision = productFields(kind, given);
  if ('faults' in decision) throw new Error(decision.faults.map((fault) => fault.message).join('; '));
  return decision;
}

function faultyFields(kind: ProductKind, given: GivenProductFields): string[] {
  const decision = productFields(kind, given);
  return 'faults' in decision ? decision.faults.map((fault) => fault.field) : [];
}

describe('the fields of a product', () => {
  it('takes a cartridge from its notation', () => {
    const { fields, stockForm } = fieldsOf('cartridge', { notation: '1207RL' });
    expect(fields).toMatchObject({
      points: 7,
      grouping: 'round liner',
      diameterHundredthsMillimetre: 35,
      taper: null,
      membrane: 'unknown',
      machineFit: null,
    });
    expect(stockForm).toBe('pieces');
  });

  it('lets fields say what the notation leaves open', () => {
    const { fields } = fieldsOf('cartridge', {
      notation: '3RL',
      diameterHundredthsMillimetre: 18,
      taper: 'long',
      points: 3,
    });
    expect(fields).toMatchObject({ points: 3, diameterHundredthsMillimetre: 18, taper: 'long' });
  });

  it('refuses fields that contradict the notation, naming both', () => {
    const decision = productFields('cartridge', { notation: '1207RL', points: 5, grouping: 'flat' });
    expect(decision).toEqual({
      faults: [
        { field: 'points', message: expect.stringMatching(/1207RL says 7.*points says 5/) },
        { field: 'grouping', message: expect.stringMatching(/says round liner.*says flat/) },
      ],
    });
  });

  it('leaves an unknown diameter unknown', () => {
    expect(fieldsOf('cartridge', { notation: '3RL' }).fields.diameterHundredthsMillimetre).toBeNull();
  });

  it('refuses a cartridge of which nothing is said, and an ambiguous diameter', () => {
    expect(faultyFields('cartridge', {})).toEqual(['notation']);
    expect(faultyFields('cartridge', { notation: '1307RL' })).toEqual(['notation']);
  });

  it('refuses a pigment without its volume', () => {
    expect(faultyFields('pigment', { shade: 'Umber' })).toEqual(['volumeMicrolitres']);
  });

  it('takes a pigment for a colour unless it is said to be a thinner', () => {
    expect(fieldsOf('pigment', { volumeMicrolitres: 10_000 }).fields.pigmentRole).toBe('colour');
    expect(
      fieldsOf('pigment', { volumeMicrolitres: 10_000, pigmentRole: 'thinner' }).fields.pigmentRole,
    ).toBe('thinner');
  });

  it('refuses what belongs to another kind instead of dropping it', () => {
    expect(faultyFields('pigment', { volumeMicrolitres: 10_000, points: 3, notation: '3RL' })).toEqual([
      'notation',
      'points',
    ]);
    expect(faultyFields('cartridge', { notation: '3RL', openedLife: 'P6M', shade: 'Umber' })).toEqual([
      'shade',
      'openedLife',
    ]);
    expect(faultyFields('consumable', { volumeMicrolitres: 30_000, taper: 'long' })).toEqual([
      'volumeMicrolitres',
      'taper',
    ]);
  });

  it('keeps a consumable as a container only when it has an opened life', () => {
    expect(fieldsOf('consumable', { openedLife: 'P28D' }).stockForm).toBe('container');
    expect(fieldsOf('consumable', {}).stockForm).toBe('pieces');
  });

  it('refuses an opened life that cannot be read or that nobody would believe', () => {
    for (const openedLife of ['12M', 'P121M', 'P0D']) {
      expect(faultyFields('pigment', { volumeMicrolitres: 1, openedLife })).toEqual(['openedLife']);
    }
  });
});

describe('a change of fields', () => {
  const known = fieldsOf('cartridge', { notation: '1203RLST', machineFit: 'pen' }).fields;

  it('keeps what it does not name', () => {
    const { fields } = fieldsOf('cartridge', changedFields(known, { membrane: 'yes' }));
    expect(fields).toEqual({ ...known, membrane: 'yes' });
  });

  it('replaces the whole configuration by a new notation', () => {
    const { fields } = fieldsOf('cartridge', changedFields(known, { notation: '5RS' }));
    expect(fields).toMatchObject({
      points: 5,
      grouping: 'round shader',
      diameterHundredthsMillimetre: null,
      taper: null,
      machineFit: 'pen',
    });
  });

  it('makes a field unknown by null', () => {
    const { fields } = fieldsOf('cartridge', changedFields(known, { taper: null }));
    expect(fields.taper).toBeNull();
  });
});
