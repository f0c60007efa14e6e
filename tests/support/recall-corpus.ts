import type { LotFacts } from '../../src/stock/lot-matching/lot-facts.js';
import type { DaySpan, LotScope, LotTerm, ScopeItem } from '../../src/stock/lot-matching/lot-scope.js';
import type { SeededRandom } from './random.js';

/** A batch as its maker made and labelled it. */
interface Batch {
  product: MadeProduct;
  code: string;
  useBy: string;
  useByPrecision: 'day' | 'month' | 'year';
  manufacturedOn: string;
}

interface MadeProduct {
  id: string;
  maker: string;
  name: string;
  shade: string;
  gtin: string;
}

/** A lot on record, and what is true of it. Nothing of the rules that are judged was asked for it. */
export interface CorpusLot {
  facts: LotFacts;
  isMeant: boolean;
  /** What went wrong when it was written down; empty: nothing that a notice could stumble over. */
  disturbances: string[];
}

export interface CorpusCase {
  scope: LotScope;
  /** Whether the notice says enough for a lot to be meant for certain. */
  namesAll: boolean;
  lots: CorpusLot[];
}

const makers = ['Nordlys Pigment', 'Fjordfarve', 'Halden Colour Works', 'Atelier Brune', 'Tuschwerk'];
const names = ['Brow Colour', 'Lip Tint', 'Ink for Liner', 'Areola Shade', 'Carbon Base'];
const shades = ['Umber', 'Sand', 'Cocoa', 'Rosewood', 'Graphite', 'Warm Clay'];
const legalForms = ['', ' Ltd', ' GmbH', ', Inc.', ' A/S'];
const lookAlikes: Record<string, string> = {
  '0': 'O',
  '1': 'I',
  '5': 'S',
  '8': 'B',
  O: '0',
  I: '1',
  S: '5',
  B: '8',
};

/** A notice as a maker would write it, and the lots of a studio that wrote down its labels with slips of the hand. */
export function corpusCase(random: SeededRandom): CorpusCase {
  const products = makeProducts(random);
  const batches = products.flatMap((product) => makeBatches(random, product));
  // One code on two shades, and one code printed with two dates: both happen.
  const [first, ...others] = batches;
  const twin = others.find(({ product }) => first !== undefined && isOtherShade(product, first.product));
  if (first !== undefined && twin !== undefined) twin.code = first.code;
  const recalled = random.pick(batches);
  const notice = makeNotice(random, recalled, batches);
  return {
    scope: { items: [notice.item] },
    namesAll: notice.namesAll,
    lots: batches.map((batch, index) => writeDown(random, batch, index, notice)),
  };
}

interface Notice {
  item: ScopeItem;
  namesAll: boolean;
  isMeant: (batch: Batch) => boolean;
  namesCodes: boolean;
}

function makeProducts(random: SeededRandom): MadeProduct[] {
  const [maker, otherMaker] = random.pickSome(makers, 2);
  const [name, otherName] = random.pickSome(names, 2);
  const [shade, otherShade] = random.pickSome(shades, 2);
  const make = (
    of: string | undefined,
    called: string | undefined,
    in_: string | undefined,
    index: number,
  ) => ({
    id: `product ${index}`,
    maker: of ?? '',
    name: called ?? '',
    shade: in_ ?? '',
    gtin: `0950110153${random.between(0, 899) + 100}${index}`,
  });
  return [
    make(maker, name, shade, 0),
    make(maker, name, otherShade, 1),
    make(maker, otherName, shade, 2),
    make(otherMaker, otherName, shade, 3),
    make(otherMaker, name, otherShade, 4),
  ];
}

function isOtherShade(one: MadeProduct, other: MadeProduct): boolean {
  return one.maker === other.maker && one.name === other.name && one.shade !== other.shade;
}

/** Five batches in a row, with codes that count up. */
function makeBatches(random: SeededRandom, product: MadeProduct): Batch[] {
  const before = random.pick(['', '', 'L', 'NP-', 'X2', 'B/']);
  const after = random.pick(['', '', '', 'E', '-A']);
  const digits = random.between(4, 8);
  const start = random.between(0, 10 ** (digits - 1));
  return Array.from({ length: 5 }, (_, index) => {
    const month = random.between(1, 12);
    const precision = random.pick(['day', 'month', 'month', 'year'] as const);
    return {
      product,
      code: `${before}${String(start + index * random.between(1, 3)).padStart(digits, '0')}${after}`,
      useBy: lastDay(random.between(2027, 2029), month, precision, random.between(1, 28)),
      useByPrecision: precision,
      manufacturedOn: `2025-${two(random.between(1, 12))}-${two(random.between(1, 28))}`,
    };
  });
}

function makeNotice(random: SeededRandom, recalled: Batch, batches: readonly Batch[]): Notice {
  const { product } = recalled;
  const naming = random.pick([
    'all',
    'all',
    'all',
    'gtin',
    'no shade',
    'no maker',
    'chosen',
    'nothing',
  ] as const);
  const isProduct = (other: MadeProduct) =>
    naming === 'no shade'
      ? other.maker === product.maker && other.name === product.name
      : naming === 'nothing' || other.id === product.id;
  const ofProduct = batches.filter((batch) => isProduct(batch.product));
  const said = {
    makerName: ['all', 'no shade'].includes(naming)
      ? respelled(random, product.maker + random.pick(legalForms))
      : null,
    productName: ['all', 'no shade', 'no maker'].includes(naming) ? respelled(random, product.name) : null,
    shade: ['all', 'no maker'].includes(naming) ? respelled(random, product.shade) : null,
    gtins: naming === 'gtin' ? [product.gtin] : [],
    productIds: naming === 'chosen' ? batches.map((_, index) => registered(product, index)) : [],
  };
  const lots = namedLots(random, recalled, ofProduct, naming === 'nothing');
  const openEnded = naming !== 'nothing' && random.below(12) === 0;
  return {
    item: { ...said, lots: lots.terms, openEnded },
    // A notice without a product, or that leaves out the maker, or names no lots, leaves it to a person.
    namesAll: !['nothing', 'no maker'].includes(naming) && lots.terms.length > 0,
    isMeant: (batch) => isProduct(batch.product) && lots.has(batch),
    namesCodes: lots.namesCodes,
  };
}

interface NamedLots {
  terms: LotTerm[];
  has: (batch: Batch) => boolean;
  namesCodes: boolean;
}

function namedLots(
  random: SeededRandom,
  recalled: Batch,
  ofProduct: readonly Batch[],
  onlyCodes: boolean,
): NamedLots {
  const kinds = ['codes', 'codes', 'dated code', 'range'] as const;
  const kind = random.pick(onlyCodes ? kinds : [...kinds, 'use-by', 'manufactured', 'all', 'none']);
  const code = (batch: Batch, useBy: DaySpan | null): LotTerm => ({
    kind: 'code',
    code: random.below(3) === 0 ? ` ${batch.code.toLowerCase()}` : batch.code,
    useBy,
  });
  switch (kind) {
    case 'codes': {
      const named = [recalled, ...random.pickSome(ofProduct, random.below(3))];
      const codes = new Set(named.map((batch) => batch.code));
      const terms = named.map((batch) => code(batch, null));
      return { terms, has: (batch) => codes.has(batch.code), namesCodes: true };
    }
    case 'dated code': {
      const useBy = spanOf(recalled);
      const has = (batch: Batch) => batch.code === recalled.code && overlap(spanOf(batch), useBy);
      return { terms: [code(recalled, useBy)], has, namesCodes: true };
    }
    case 'range': {
      const codes = ofProduct
        .map((batch) => batch.code)
        .filter(
          (other) => other.length === recalled.code.length && textAround(other) === textAround(recalled.code),
        )
        .sort();
      const start = codes.indexOf(recalled.code);
      const [from, through] = [
        recalled.code,
        codes[random.between(start, codes.length - 1)] ?? recalled.code,
      ];
      const has = (batch: Batch) => batch.code.length === from.length && isCounted(batch.code, from, through);
      return { terms: [{ kind: 'code range', from, through, useBy: null }], has, namesCodes: true };
    }
    case 'use-by': {
      const useBy = spanOf(recalled);
      return {
        terms: [{ kind: 'use-by', useBy }],
        has: ({ useBy: day }) => isWithin(day, useBy),
        namesCodes: false,
      };
    }
    case 'manufactured': {
      const { manufacturedOn } = recalled;
      const manufactured = {
        from: manufacturedOn,
        through: random.below(4) === 0 ? null : `${manufacturedOn.slice(0, 7)}-31`,
      };
      const has = (batch: Batch) => isWithin(batch.manufacturedOn, manufactured);
      return { terms: [{ kind: 'manufactured', manufactured }], has, namesCodes: false };
    }
    case 'all':
      return { terms: [{ kind: 'all lots' }], has: () => true, namesCodes: false };
    default:
      return { terms: [], has: () => true, namesCodes: false };
  }
}

/** Slips are made in the register for each lot anew, so each lot has a product of its own there. */
function registered({ id }: MadeProduct, index: number): string {
  return `${id} of lot ${index}`;
}

/** Writes down what the label of a batch says, most often rightly. */
function writeDown(random: SeededRandom, batch: Batch, index: number, notice: Notice): CorpusLot {
  const { product, useBy, useByPrecision, manufacturedOn } = batch;
  const disturbances: string[] = [];
  const sometimes = (what: string, oneIn: number) => {
    if (random.below(oneIn) > 0) return false;
    disturbances.push(what);
    return true;
  };
  const facts: LotFacts = {
    lotId: `lot ${index}`,
    productId: registered(product, index),
    makerName: respelled(random, product.maker + random.pick(legalForms)),
    productName: respelled(random, product.name),
    shade: respelled(random, product.shade),
    gtins: random.below(2) === 0 && notice.item.gtins.length === 0 ? [] : [product.gtin],
    codes: [{ kind: 'lot', code: respelledCode(random, batch.code), superseded: false }],
    codeState: 'printed',
    useBy,
    useByPrecision,
    manufacturedOn,
  };
  if (notice.item.productIds.length === 0 && notice.item.gtins.length === 0) {
    if (sometimes('slip in the maker', 20)) facts.makerName = slippedName(random, product.maker);
    if (sometimes('slip in the product', 20)) facts.productName = slippedName(random, product.name);
    if (sometimes('part of the product', 25)) facts.productName = random.pick(product.name.split(' '));
    if (sometimes('no shade on record', 25)) facts.shade = null;
    else if (sometimes('slip in the shade', 25)) facts.shade = slippedName(random, product.shade);
  } else if (notice.item.gtins.length > 0 && sometimes('no GTIN on record', 15)) {
    facts.gtins = [];
  }
  if (random.below(3) === 0) disturbances.push(...disturbCode(random, facts, batch));
  const isDated = notice.item.lots.some((term) => 'useBy' in term && term.useBy !== null);
  if (sometimes('no use-by on record', 20))
    Object.assign(facts, { useBy: null, useByPrecision: 'none printed' });
  else if (
    isDated &&
    notice.namesCodes &&
    keepsCode(disturbances) &&
    sometimes('another use-by on record', 12)
  ) {
    Object.assign(facts, { useBy: '2031-06-30', useByPrecision: 'month' });
  }
  if (sometimes('no manufacture date on record', 15)) facts.manufacturedOn = null;
  return { facts, isMeant: notice.isMeant(batch), disturbances };
}

/** Whether the code that was written down can still be told without a doubt but for what looks alike. */
function keepsCode(disturbances: readonly string[]): boolean {
  return disturbances.every(
    (one) => !one.startsWith('code: ') || ['code: spacing', 'code: look-alike'].includes(one),
  );
}

function disturbCode(random: SeededRandom, facts: LotFacts, { code }: Batch): string[] {
  const kind = random.pick([
    'spacing',
    'look-alike',
    'changed',
    'missing',
    'added',
    'swapped',
    'unreadable',
    'not written down',
    'corrected from',
    'corrected to',
  ] as const);
  const at = random.below(code.length);
  const letter = random.pick([...'0123456789ACEX']);
  const write = (text: string) => {
    facts.codes = [{ kind: 'lot', code: text, superseded: false }];
  };
  switch (kind) {
    case 'spacing':
      write(`${code.slice(0, at)}${random.pick([' ', '-', '/'])}${code.slice(at)}`);
      break;
    case 'look-alike':
      write(Array.from(code, (each) => (random.below(2) === 0 ? (lookAlikes[each] ?? each) : each)).join(''));
      break;
    case 'changed':
      write(code.slice(0, at) + letter + code.slice(at + 1));
      break;
    case 'missing':
      write(code.slice(0, at) + code.slice(at + 1));
      break;
    case 'added':
      write(code.slice(0, at) + letter + code.slice(at));
      break;
    case 'swapped': {
      const from = Math.min(at, code.length - 2);
      write(code.slice(0, from) + code.charAt(from + 1) + code.charAt(from) + code.slice(from + 2));
      break;
    }
    case 'unreadable':
      Object.assign(facts, { codes: [], codeState: 'unreadable' });
      break;
    case 'not written down':
      Object.assign(facts, { codes: [], codeState: 'none printed' });
      break;
    case 'corrected from':
      facts.codes = [{ kind: 'lot', code: `${letter}${letter}77`, superseded: true }, ...facts.codes];
      break;
    default:
      facts.codes = [
        { kind: 'lot', code, superseded: true },
        { kind: 'lot', code: `Q${letter}${letter}4711`, superseded: false },
      ];
  }
  return [`code: ${kind}`];
}

/** The same name to anybody who reads it. */
function respelled(random: SeededRandom, name: string): string {
  const kind = random.below(6);
  if (kind === 0) return name.toUpperCase();
  if (kind === 1) return name.toLowerCase();
  if (kind === 2) return name.replaceAll(' ', '-');
  if (kind === 3) return name.replaceAll('o', '\u043e').replaceAll('a', '\u0430');
  return name;
}

function respelledCode(random: SeededRandom, code: string): string {
  const kind = random.below(5);
  if (kind === 0) return code.toLowerCase();
  if (kind === 1) return `${code} `;
  return code;
}

/** One letter missing, doubled or changed in a word, or two swapped. */
function slippedName(random: SeededRandom, name: string): string {
  const at = random.between(1, name.length - 2);
  const kind = random.below(4);
  if (kind === 0) return name.slice(0, at) + name.slice(at + 1);
  if (kind === 1) return name.slice(0, at) + name.charAt(at) + name.slice(at);
  if (kind === 2) return `${name.slice(0, at)}q${name.slice(at + 1)}`;
  return name.slice(0, at) + name.charAt(at + 1) + name.charAt(at) + name.slice(at + 2);
}

function lastDay(year: number, month: number, precision: 'day' | 'month' | 'year', day: number): string {
  if (precision === 'year') return `${year}-12-31`;
  if (precision === 'day') return `${year}-${two(month)}-${two(day)}`;
  return new Date(Date.UTC(year, month, 0)).toISOString().slice(0, 10);
}

/** What a notice says of the date that is printed: the day, the month or the year. */
function spanOf({ useBy, useByPrecision }: Batch): DaySpan {
  if (useByPrecision === 'day') return { from: useBy, through: useBy };
  const from = useByPrecision === 'month' ? `${useBy.slice(0, 7)}-01` : `${useBy.slice(0, 4)}-01-01`;
  return { from, through: useBy };
}

function overlap(one: DaySpan, other: DaySpan): boolean {
  return isWithin(one.from ?? '', other) || isWithin(other.from ?? '', one);
}

function isWithin(day: string, { from, through }: DaySpan): boolean {
  return (from === null || day >= from) && (through === null || day <= through);
}

/** Codes of one row have equally many digits and equal text around them, so that they sort as they count. */
function isCounted(code: string, from: string, through: string): boolean {
  return textAround(code) === textAround(from) && code >= from && code <= through;
}

function textAround(code: string): string {
  return code.replace(/\d{4,}/, '#');
}

function two(number: number): string {
  return String(number).padStart(2, '0');
}
