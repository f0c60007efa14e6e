/** What is planned: a product, or cartridges of one configuration that stand for each other. */
export type ItemKind = 'product' | 'configuration';

/** What an item is counted in: pieces, or what is dropped from bottles in microlitres. */
export type ItemUnit = 'pieces' | 'microlitres';

/** What one use takes where nothing tells: a piece, or five drops. [C] */
export const ASSUMED_UNITS: Readonly<Record<ItemUnit, number>> = { pieces: 1, microlitres: 250 };

export interface Item {
  kind: ItemKind;
  /** A product id, or the key of a configuration pool. */
  key: string;
  unit: ItemUnit;
}
