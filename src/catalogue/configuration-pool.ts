import type { NeedleGrouping, NeedleTaper } from './cartridge-notation.js';

/** What must be known, and equal, before cartridges of different makers stand for each other. */
export interface PoolFacts {
  points: number | null;
  grouping: NeedleGrouping | null;
  diameterHundredthsMillimetre: number | null;
  taper: NeedleTaper | null;
  /** The machines the module fits, as the studio names them; capitals and spacing do not matter. */
  machineFit: string | null;
  /**
   * Back-flow barrier. Left out, it does not count. Given, it must be known and equal too: a studio that
   * distinguishes by it gives it for every product.
   */
  membrane?: 'yes' | 'no' | 'unknown';
}

export interface PoolProduct {
  productId: string;
  /** Null for a product that is no cartridge or blade. */
  facts: PoolFacts | null;
}

/** A person has declared that two products stand for each other; it holds both ways. */
export interface DeclaredEquivalence {
  productId: string;
  otherProductId: string;
}

export interface ConfigurationPool {
  /** Products that stand for each other, ordered by id; one alone when nothing is known to equal it. */
  productIds: string[];
  /** The distinct keys within, ordered; more than one only when a person declared them equivalent. */
  poolKeys: string[];
  /** True when it is held together, at least in part, by a declaration of a person. */
  declared: boolean;
}

/**
 * The key under which a cartridge stands for others with an equal key. A single needle is one point in any
 * grouping. Trade practice, no standards body [S].
 *
 * @returns a stable text, or null when anything needed is unknown: then the product stands alone
 */
export function poolKey(facts: PoolFacts): string | null {
  const { points, grouping, diameterHundredthsMillimetre, taper, membrane } = facts;
  const machineFit = facts.machineFit?.trim().toLowerCase().replace(/\s+/g, ' ') ?? '';
  if (points === null || diameterHundredthsMillimetre === null || taper === null || machineFit === '')
    return null;
  const arrangement = points === 1 ? 'single point' : grouping;
  if (arrangement === null || membrane === 'unknown') return null;
  // The machine fit is free text and stands last, so that no text in it can look like another field.
  return [
    `${points} points`,
    arrangement,
    `${diameterHundredthsMillimetre} hundredths of a millimetre`,
    `${taper} taper`,
    membrane === undefined ? 'membrane not counted' : `membrane ${membrane}`,
    `fits ${machineFit}`,
  ].join(', ');
}

/**
 * Groups products into pools: those with equal keys, and those declared equivalent, carried on transitively, also
 * through products that are no longer listed. Every listed product is in exactly one pool; pools are ordered by
 * their first product id.
 */
export function configurationPools(
  products: readonly PoolProduct[],
  declaredEquivalences: readonly DeclaredEquivalence[],
): ConfigurationPool[] {
  const parents = new Map<string, string>();
  const firstWithKey = new Map<string, string>();
  const keys = new Map<string, string>();

  for (const { productId, facts } of products) {
    const key = facts === null ? null : poolKey(facts);
    if (key === null) continue;
    keys.set(productId, key);
    const first = firstWithKey.get(key);
    if (first === undefined) firstWithKey.set(key, productId);
    else join(parents, productId, first);
  }
  for (const { productId, otherProductId } of declaredEquivalences) join(parents, productId, otherProductId);

  const members = new Map<string, Set<string>>();
  for (const { productId } of products) {
    const root = rootOf(parents, productId);
    const pool = members.get(root) ?? new Set();
    members.set(root, pool.add(productId));
  }
  return [...members.values()]
    .map((pool) => describePool([...pool].sort(), keys))
    .sort((a, b) => compareText(a.productIds[0] ?? '', b.productIds[0] ?? ''));
}

function describePool(productIds: string[], keys: ReadonlyMap<string, string>): ConfigurationPool {
  const poolKeys = new Set<string>();
  let withoutKey = 0;
  for (const productId of productIds) {
    const key = keys.get(productId);
    if (key === undefined) withoutKey += 1;
    else poolKeys.add(key);
  }
  const declared = productIds.length > 1 && (withoutKey > 0 || poolKeys.size > 1);
  return { productIds, poolKeys: [...poolKeys].sort(), declared };
}

function rootOf(parents: Map<string, string>, productId: string): string {
  let root = productId;
  for (let parent = parents.get(root); parent !== undefined; parent = parents.get(root)) root = parent;
  // Point everything passed straight at the root, so that long chains of declarations stay quick.
  for (let current = productId; current !== root; ) {
    const next = parents.get(current) ?? root;
    parents.set(current, root);
    current = next;
  }
  return root;
}

function join(parents: Map<string, string>, productId: string, otherProductId: string): void {
  const root = rootOf(parents, productId);
  const otherRoot = rootOf(parents, otherProductId);
  if (root !== otherRoot) parents.set(root, otherRoot);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
