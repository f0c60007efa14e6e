import type { ConfigurationView } from '../../../catalogue/configurations.views.js';
import type {
  ConfigurationLevelView,
  LevelView,
  ProductLevelView,
  StockLevelsView,
  ToTakeView,
} from '../../../stock/levels.views.js';
import type { LotQuantitiesView } from '../../../stock/lot-list.views.js';

/** One line of the levels: a shade, a consumable, or a configuration of cartridges with all that stand for each other. */
export interface LevelRow {
  subjectKind: LevelView['subjectKind'];
  subjectId: string;
  name: string;
  /** What else tells it apart, such as its maker. */
  about: string[];
  /** What it is made up of. */
  products: { productId: string; name: string }[];
  quantities: LotQuantitiesView;
  reservedPieces: number;
  level: LevelView | null;
  low: boolean;
  toTake: ToTakeView[];
}

export interface LevelRows {
  pigments: LevelRow[];
  cartridges: LevelRow[];
  consumables: LevelRow[];
}

/**
 * Puts levels into the order in which a shelf is read. A cartridge stands under its configuration; one of which too little
 * is known, or that has a minimum of its own, stands by itself.
 */
export function levelRows(levels: StockLevelsView, configurations: readonly ConfigurationView[]): LevelRows {
  const pooled = new Set(levels.configurations.flatMap(({ productIds }) => productIds));
  const products = (kind: ProductLevelView['kind']) =>
    levels.products.filter((product) => product.kind === kind).map(rowOfProduct);
  const byKey = new Map(configurations.flatMap((one) => one.keys.map((key) => [key, one] as const)));
  return {
    pigments: products('pigment'),
    cartridges: [
      ...levels.configurations.map((level) => rowOfConfiguration(level, byKey.get(level.keys[0] ?? ''))),
      ...products('cartridge').filter(({ subjectId, level }) => !pooled.has(subjectId) || level !== null),
    ],
    consumables: products('consumable'),
  };
}

function rowOfProduct({ productId, productName, shade, makerName, ...counted }: ProductLevelView): LevelRow {
  const { quantities, reservedPieces, level, low, toTake } = counted;
  const name = shade === null ? productName : `${productName} ${shade}`;
  return {
    subjectKind: 'product',
    subjectId: productId,
    name,
    about: [makerName],
    products: [{ productId, name }],
    ...{ quantities, reservedPieces, level, low, toTake },
  };
}

function rowOfConfiguration(
  { keys, productIds, quantities, reservedPieces, level, low, toTake }: ConfigurationLevelView,
  configuration: ConfigurationView | undefined,
): LevelRow {
  const products = configuration?.products ?? [];
  const notations = distinct(products.map(({ notation }) => notation));
  const subjectId = level?.subjectId ?? keys[0] ?? '';
  return {
    subjectKind: 'configuration',
    subjectId,
    name: notations.length > 0 ? notations.join(' / ') : subjectId,
    about: distinct(products.map(({ machineFit }) => machineFit)),
    products: productIds.map((productId) => {
      const product = products.find(({ id }) => id === productId);
      return { productId, name: product ? `${product.makerName} ${product.name}` : productId };
    }),
    ...{ quantities, reservedPieces, level, low, toTake },
  };
}

function distinct(texts: readonly (string | null)[]): string[] {
  return [...new Set(texts.filter((text) => text !== null))];
}
