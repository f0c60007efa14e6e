/** How a product is called in an order: `Brow pigment Warm umber`. */
export function lineName({ productName, shade }: { productName: string; shade: string | null }): string {
  return shade === null ? productName : `${productName} ${shade}`;
}
