import type { ProductFacts } from './lot-facts.js';
import type { ScopeItem } from './lot-scope.js';
import { type MatchFacts, type MatchReason, matchReason, type ProductReasonCode } from './match-reasons.js';
import {
  compareNames,
  makerWords,
  type NameLikeness,
  nameWords,
  withoutBeginning,
  withoutEnd,
} from './names.js';

/** `slight`: so unlike what is named that only a lot of an equal code may be meant. */
export type ProductGrade = 'certain' | 'possible' | 'slight' | 'not';

export interface ProductMatch {
  grade: ProductGrade;
  reason: MatchReason;
}

/** `unnamed`: the notice does not say. */
type Likeness = NameLikeness | 'unnamed';

interface Names {
  maker: Likeness;
  product: Likeness;
  /** `unknown`: the notice names one and the record has none. */
  shade: Likeness | 'unknown';
}

/** What a notice's GTINs say: `unknown` when there are none to compare. */
type GtinLikeness =
  | { kind: 'equal' | 'other pack'; named: string; recorded: string }
  | { kind: 'other' | 'unknown' };

/**
 * Whether a product of the register is one that an item of a notice means. Products that a person chose decide alone. A
 * shade that the notice names and the record clearly names otherwise is another product, whatever else is equal, unless
 * even the GTIN is: then the notice contradicts itself. A GTIN and names that contradict each other leave it possible. Where maker
 * and name both differ it is another product.
 */
export function matchProduct(item: ScopeItem, product: ProductFacts): ProductMatch {
  if (item.productIds.length > 0) {
    return item.productIds.includes(product.productId)
      ? { grade: 'certain', reason: matchReason('product chosen') }
      : match('not', 'other product', labels(item, product));
  }
  const names = compareWithNames(item, product);
  const gtin = compareGtins(item.gtins, product.gtins);
  const byNames = gradeNames(names, item, product);
  if (gtin.kind === 'equal') {
    return isContradicted(names)
      ? match('possible', 'gtin equal, named otherwise', labels(item, product))
      : match('certain', 'gtin equal', { named: gtin.named, recorded: gtin.recorded });
  }
  if (byNames === undefined) return byGtinAlone(item, product, gtin);
  if (gtin.kind === 'other pack') {
    return byNames.grade === 'certain' || byNames.grade === 'possible'
      ? byNames
      : match('possible', 'gtin of another pack', { named: gtin.named, recorded: gtin.recorded });
  }
  if (gtin.kind === 'unknown') return byNames;
  if (byNames.grade === 'certain') {
    return match('possible', 'names equal, other gtin', {
      named: item.gtins.join(', '),
      recorded: product.gtins.join(', '),
    });
  }
  return byNames.grade === 'slight' ? match('not', 'other product', labels(item, product)) : byNames;
}

/** Undefined when the notice gives no names at all. */
function gradeNames(
  { maker, product: name, shade }: Names,
  item: ScopeItem,
  product: ProductFacts,
): ProductMatch | undefined {
  const shades = { named: item.shade, recorded: product.shade };
  const products = { named: item.productName, recorded: product.productName };
  const makers = { named: item.makerName, recorded: product.makerName };
  if (shade === 'different') return match('not', 'other shade', shades);
  if (name === 'unnamed' && maker === 'unnamed') {
    if (shade === 'unnamed') return undefined;
    return shade === 'unknown'
      ? match('slight', 'no shade on record', shades)
      : match('possible', 'only shade', shades);
  }
  if (name === 'unnamed') {
    return maker === 'different'
      ? match('not', 'other product', labels(item, product))
      : match('possible', 'only maker', makers);
  }
  if (name === 'different') {
    return maker === 'same' || maker === 'similar'
      ? match('slight', 'slight likeness', labels(item, product))
      : match('not', 'other product', labels(item, product));
  }
  if (name === 'similar') {
    return maker === 'different'
      ? match('slight', 'slight likeness', labels(item, product))
      : match('possible', 'product name similar', products);
  }
  if (maker === 'unnamed') return match('possible', 'only product name', products);
  if (maker === 'different') return match('possible', 'product name equal, other maker', makers);
  if (maker === 'similar') return match('possible', 'maker similar', makers);
  if (shade === 'similar') return match('possible', 'shade similar', shades);
  if (shade === 'unknown') return match('possible', 'no shade on record', shades);
  return match('certain', 'names equal', { recorded: label(product) });
}

function byGtinAlone(item: ScopeItem, product: ProductFacts, gtin: GtinLikeness): ProductMatch {
  const facts = { named: item.gtins.join(', '), recorded: product.gtins.join(', ') };
  if (item.gtins.length === 0) return match('possible', 'no product named');
  switch (gtin.kind) {
    case 'other pack':
      return match('possible', 'gtin of another pack', { named: gtin.named, recorded: gtin.recorded });
    case 'unknown':
      return match('possible', 'no gtin on record', facts);
    default:
      return match('slight', 'slight likeness', facts);
  }
}

function isContradicted({ maker, product, shade }: Names): boolean {
  return maker === 'different' || product === 'different' || shade === 'different';
}

function compareWithNames(item: ScopeItem, product: ProductFacts): Names {
  const [maker, recordedMaker] = [makerWords(item.makerName), makerWords(product.makerName)];
  const [shade, recordedShade] = [nameWords(item.shade), nameWords(product.shade)];
  // Notices and registers write the maker before the product's name, or the shade behind it, as part of it.
  const said = nameWords(item.productName);
  const named = [maker, recordedMaker].reduce(withoutBeginning, said);
  const recorded = withoutBeginning(nameWords(product.productName), recordedMaker);
  const bare = withoutEnd(withoutEnd(named, shade), recordedShade);
  const recordedBare = withoutEnd(withoutEnd(recorded, recordedShade), shade);
  const saysMaker = said.length > withoutBeginning(said, recordedMaker).length;
  const saysShade = recordedShade.length > 0 && named.length > withoutEnd(named, recordedShade).length;
  const recordsShade = shade.length > 0 && recorded.length > withoutEnd(recorded, shade).length;
  return {
    maker: maker.length > 0 ? compareNames(maker, recordedMaker) : saysMaker ? 'same' : 'unnamed',
    product: bare.length > 0 ? compareNames(bare, recordedBare) : 'unnamed',
    shade: shadeLikeness(shade, recordedShade, saysShade || recordsShade),
  };
}

function shadeLikeness(
  named: readonly string[],
  recorded: readonly string[],
  saidInName: boolean,
): Names['shade'] {
  if (named.length === 0) return saidInName ? 'same' : 'unnamed';
  if (recorded.length === 0) return saidInName ? 'same' : 'unknown';
  return compareNames(named, recorded);
}

function compareGtins(named: readonly string[], recorded: readonly string[]): GtinLikeness {
  if (named.length === 0 || recorded.length === 0) return { kind: 'unknown' };
  const wanted = named.map(fourteenDigits);
  const known = recorded.map(fourteenDigits);
  const pair = (isMeant: (one: string, other: string) => boolean) =>
    wanted.flatMap((one) =>
      known.filter((other) => isMeant(one, other)).map((other) => [one, other] as const),
    )[0];
  const equal = pair((one, other) => one === other);
  if (equal) return { kind: 'equal', named: equal[0], recorded: equal[1] };
  const pack = pair((one, other) => itemOf(one) === itemOf(other));
  return pack ? { kind: 'other pack', named: pack[0], recorded: pack[1] } : { kind: 'other' };
}

function fourteenDigits(gtin: string): string {
  return gtin.replace(/\D/g, '').padStart(14, '0');
}

/** A pack's GTIN-14 holds that of its content between indicator and check digit (GS1 General Specifications [M]). */
function itemOf(gtin: string): string {
  return gtin.slice(1, 13);
}

function labels(item: ScopeItem, product: ProductFacts): MatchFacts {
  return { named: label(item) || item.gtins.join(', '), recorded: label(product) };
}

function label({
  makerName,
  productName,
  shade,
}: Pick<ScopeItem, 'makerName' | 'productName' | 'shade'>): string {
  return [makerName, productName, shade].filter(Boolean).join(' ');
}

function match(grade: ProductGrade, code: ProductReasonCode, facts: MatchFacts = {}): ProductMatch {
  return { grade, reason: matchReason(code, facts) };
}
