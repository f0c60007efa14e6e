import type { Read } from '../../platform/database/database.js';
import type { ProductDays } from '../days-of-warning.js';

/** The days of warning of all products that have their own, by product id. */
export async function productDays(read: Read, studioId: string): Promise<Map<string, ProductDays>> {
  const rows = await read<ProductDays & { productId: string }>(
    `SELECT product_id AS "productId", use_by_near_days AS "useByNearDays",
       opened_life_ending_days AS "openedLifeEndingDays"
     FROM date_threshold WHERE studio_id = $1`,
    [studioId],
  );
  return new Map(rows.map(({ productId, ...days }) => [productId, days]));
}
