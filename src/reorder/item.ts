/** What is planned: a product, or cartridges of one configuration that stand for each other. */
export type ItemKind = 'product' | 'configuration';

/** What an item is counted in: pieces, or what is dropped from bottles in microlitres. */
export type ItemUnit = 'pieces' | 'microlitres';

export interface Item {
  kind: ItemKind;
  /** A product id, or the key of a configuration pool. */
  key: string;
  unit: ItemUnit;
}
