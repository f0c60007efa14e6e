import { LotQuantitiesView } from './lot-list.views.js';

/** The minimum of a product or a configuration. */
export class LevelView {
  id: string;
  subjectKind: 'product' | 'configuration';
  subjectId: string;
  minimumPieces: number;
  version: number;
}

/** One lot or opened bottle in the order in which to take it. */
export class ToTakeView {
  containerId: string;
  lotId: string;
  productId: string;
  form: 'bottle' | 'box';
  openedAt: string | null;
  lastDay: string | null;
  pieces: number;
}

export class ProductLevelView {
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
  kind: 'pigment' | 'cartridge' | 'consumable';
  quantities: LotQuantitiesView;
  /** Of what is on hand: laid out on trays. */
  reservedPieces: number;
  /** Null: none is set. */
  level: LevelView | null;
  /** At or below its minimum. */
  low: boolean;
  /** What is usable, the first to take at the front; at most ten. */
  toTake: ToTakeView[];
}

export class ConfigurationLevelView {
  /** Keys of the configuration; its minimum may stand under any of them. */
  keys: string[];
  /** None when a minimum was set for a configuration that no cartridge has any more. */
  productIds: string[];
  quantities: LotQuantitiesView;
  reservedPieces: number;
  level: LevelView | null;
  low: boolean;
  toTake: ToTakeView[];
}

export class StockLevelsView {
  products: ProductLevelView[];
  /** Cartridges of different makers that stand for each other, counted together. */
  configurations: ConfigurationLevelView[];
}
