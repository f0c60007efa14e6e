import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { configurationPools, type PoolFacts, type PoolProduct, poolKey } from './configuration-pool.js';

const known: PoolFacts = {
  points: 7,
  grouping: 'round liner',
  diameterHundredthsMillimetre: 35,
  taper: 'long',
  machineFit: 'universal',
};

function product(productId: string, facts: Partial<PoolFacts> | null = {}): PoolProduct {
  return { productId, facts: facts === null ? null : { ...known, ...facts } };
}

function members(products: PoolProduct[], ...declared: [string, string][]): string[][] {
  const pairs = declared.map(([productId, otherProductId]) => ({ productId, otherProductId }));
  return configurationPools(products, pairs).map((pool) => pool.productIds);
}

describe('a pool key', () => {
  it('is equal for equal configurations, whatever the capitals and spaces of the machine fit', () => {
    expect(poolKey({ ...known, machineFit: ' Universal ' })).toBe(poolKey(known));
    expect(poolKey(known)).not.toBeNull();
  });

  it.each([
    ['points', { points: 5 }],
    ['grouping', { grouping: 'round shader' }],
    ['diameter', { diameterHundredthsMillimetre: 30 }],
    ['taper', { taper: 'short' }],
    ['machine fit', { machineFit: 'own handpiece only' }],
  ] as const)('differs with the %s', (_name, facts) => {
    expect(poolKey({ ...known, ...facts })).not.toBe(poolKey(known));
  });

  it.each([
    ['points', { points: null }],
    ['grouping', { grouping: null }],
    ['diameter', { diameterHundredthsMillimetre: null }],
    ['taper', { taper: null }],
    ['machine fit', { machineFit: null }],
    ['machine fit, written as blanks,', { machineFit: '  ' }],
    ['membrane, where it counts,', { membrane: 'unknown' }],
  ] as const)('is missing when the %s is unknown', (_name, facts) => {
    expect(poolKey({ ...known, ...facts })).toBeNull();
  });

  it('is the same for a single point in any grouping', () => {
    const single = { ...known, points: 1 };
    expect(poolKey({ ...single, grouping: 'round shader' })).toBe(poolKey(single));
    expect(poolKey({ ...single, grouping: null })).toBe(poolKey(single));
    expect(poolKey({ ...single, diameterHundredthsMillimetre: 30 })).not.toBe(poolKey(single));
  });

  it('tells cartridges with a membrane from those without where it counts', () => {
    const keys = [known, { ...known, membrane: 'yes' as const }, { ...known, membrane: 'no' as const }].map(
      poolKey,
    );
    expect(new Set(keys).size).toBe(3);
  });

  it('cannot be forged by the text of a machine fit', () => {
    const forged = { ...known, machineFit: 'universal, 35 hundredths of a millimetre' };
    expect(poolKey(forged)).not.toBe(poolKey(known));
  });
});

describe('configuration pools', () => {
  it('join products of different makers with equal configurations', () => {
    expect(members([product('a'), product('b'), product('c', { points: 5 })])).toEqual([['a', 'b'], ['c']]);
  });

  it('leave alone what is not fully known, even beside its like', () => {
    expect(members([product('a', { taper: null }), product('b', { taper: null })])).toEqual([['a'], ['b']]);
  });

  it('join what a person has declared, either way round and transitively', () => {
    const products = [
      product('a', { taper: null }),
      product('b', { points: 5 }),
      product('c', { points: 9 }),
      product('d', { points: 9 }),
      product('e', null),
    ];
    expect(members(products, ['b', 'a'], ['b', 'c'])).toEqual([['a', 'b', 'c', 'd'], ['e']]);
  });

  it('carry a declaration on through a product that is no longer listed', () => {
    const products = [product('a', { points: 3 }), product('b', { points: 5 })];
    expect(members(products, ['a', 'gone'], ['gone', 'b'])).toEqual([['a', 'b']]);
  });

  it('say which keys they hold and whether a person declared them', () => {
    const pools = configurationPools(
      [
        product('a'),
        product('b'),
        product('c', { points: 5 }),
        product('d', { points: 9 }),
        product('e', null),
      ],
      [
        { productId: 'c', otherProductId: 'd' },
        { productId: 'e', otherProductId: 'e' },
      ],
    );
    expect(pools.map((pool) => [pool.productIds, pool.poolKeys.length, pool.declared])).toEqual([
      [['a', 'b'], 1, false],
      [['c', 'd'], 2, true],
      [['e'], 0, false],
    ]);
  });

  it('survive a long chain of declarations', () => {
    const ids = Array.from({ length: 20_000 }, (_, index) => `p${String(index).padStart(5, '0')}`);
    const pairs = ids.slice(1).map((id, index) => [ids[index] ?? '', id] as [string, string]);
    expect(
      members(
        ids.map((id) => product(id, null)),
        ...pairs,
      ),
    ).toEqual([ids]);
  });

  it('hold every product exactly once and do not depend on the order of anything', () => {
    const id = fc.integer({ min: 0, max: 9 }).map((number) => `p${number}`);
    const facts = fc.record({
      points: fc.constantFrom(1, 3, null),
      machineFit: fc.constantFrom('x', 'y', null),
    });
    const products = fc.uniqueArray(
      fc.record({ productId: id, facts }).map((one) => product(one.productId, one.facts)),
      { selector: (one) => one.productId },
    );
    const pairs = fc.array(fc.tuple(id, id), { maxLength: 6 });
    fc.assert(
      fc.property(products, pairs, (listed, declared) => {
        const pools = members(listed, ...declared);
        expect(pools.flat().sort()).toEqual(listed.map((one) => one.productId).sort());
        const swapped = declared.map(([one, other]): [string, string] => [other, one]);
        expect(members([...listed].reverse(), ...swapped.reverse())).toEqual(pools);
        for (const [one, other] of declared) {
          const poolOf = (wanted: string) => pools.find((pool) => pool.includes(wanted));
          const bothListed = poolOf(one) !== undefined && poolOf(other) !== undefined;
          if (bothListed) expect(poolOf(one)).toBe(poolOf(other));
        }
      }),
    );
  });
});
