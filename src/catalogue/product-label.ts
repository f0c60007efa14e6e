/** What a product is called by: its maker, its own name and, of a pigment, the shade. */
export interface ProductName {
  makerName: string;
  productName: string;
  shade: string | null;
}

/** A product in words, as people call it: `Halden Ink Umber`. */
export function productLabel({ makerName, productName, shade }: ProductName): string {
  return [makerName, productName, shade].filter((part) => part !== null && part !== '').join(' ');
}
