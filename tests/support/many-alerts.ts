import { v7 as uuidv7 } from 'uuid';
import { Maker } from '../../src/catalogue/maker.entity.js';
import { Product } from '../../src/catalogue/product.entity.js';
import { StockLevel } from '../../src/stock/stock-level.entity.js';
import { inTransaction } from './bare-stock.js';
import type { DataPlace } from './plain-sql.js';
import { Store } from './store.js';

/**
 * Puts as many products into the record of a service, running or not, of which there is none and should be one. Nothing
 * is judged by that: the next sweep opens an urgent alert for each, all in one transaction.
 */
export async function lackMany(place: DataPlace, studioId: string, count: number): Promise<void> {
  const store = await Store.open(place.dataFolder, place.databaseUrl);
  try {
    const actor = await store.ownerOf(studioId);
    const { chainId } = actor;
    await inTransaction(store, actor, async (transaction) => {
      const createdAt = transaction.recordedAt;
      const makerId = uuidv7();
      await transaction.insert(Maker, {
        chainId,
        id: makerId,
        name: `Maker ${makerId}`,
        version: 1,
        createdAt,
      });
      const products: Product[] = Array.from({ length: count }, (_, index) => ({
        chainId,
        id: uuidv7(),
        makerId,
        kind: 'pigment',
        name: `Colour ${index + 1}`,
        stockForm: 'container',
        shade: null,
        pigmentRole: 'colour',
        volumeMicrolitres: 10_000,
        openedLife: null,
        dropMicrolitres: null,
        colourIndexNumbers: [],
        points: null,
        grouping: null,
        diameterHundredthsMillimetre: null,
        taper: null,
        machineFit: null,
        membrane: null,
        version: 1,
        createdAt,
        archivedAt: null,
      }));
      await transaction.insert(Product, products);
      await transaction.insert(
        StockLevel,
        products.map(({ id }) => ({
          studioId,
          id: uuidv7(),
          subjectKind: 'product',
          subjectId: id,
          minimumPieces: 1,
          planId: null,
          version: 1,
          updatedAt: createdAt,
        })),
      );
    });
  } finally {
    await store.close();
  }
}
