import { microlitresOf } from '../catalogue/drop-size.js';

/** How much was used, as it was told. */
export interface ToldAmount {
  pieces?: number;
  drops?: number;
  microlitres?: number;
}

/** How a product is counted. */
export interface CountedProduct {
  productName: string;
  stockForm: 'container' | 'pieces';
  dropMicrolitres: number | null;
}

export interface UsedAmount {
  /** 0 for a share of a container. */
  pieces: number;
  drops: number | null;
  /** 0 for pieces, and when the amount is not known. */
  microlitres: number;
}

/** What was told in a unit that the product is not counted in. */
export interface AmountFault {
  field: 'pieces' | null;
  message: string;
}

/**
 * The amount of a use told afterwards. One piece when nothing is told of what is counted in pieces; unknown when nothing
 * is told of what is taken from a container.
 */
export function lateAmount(told: ToldAmount, product: CountedProduct): UsedAmount | { fault: AmountFault } {
  const { productName, stockForm, dropMicrolitres } = product;
  if (stockForm === 'pieces') {
    if (told.drops !== undefined || told.microlitres !== undefined) {
      return { fault: { field: null, message: `${productName} is counted in pieces. Give pieces.` } };
    }
    return { pieces: told.pieces ?? 1, drops: null, microlitres: 0 };
  }
  if (told.pieces !== undefined) {
    const message = `${productName} is taken from a container. Give drops or microlitres, or neither when the amount is not known.`;
    return { fault: { field: 'pieces', message } };
  }
  return { pieces: 0, drops: told.drops ?? null, microlitres: microlitresOf(told, dropMicrolitres) ?? 0 };
}
