import { v7 as uuidv7 } from 'uuid';
import { checkDigit } from '../../src/catalogue/gs1/check-digit.js';
import { Maker } from '../../src/catalogue/maker.entity.js';
import { makeLabelCode } from '../../src/catalogue/own-label.js';
import { Product } from '../../src/catalogue/product.entity.js';
import { ProductGtin } from '../../src/catalogue/product-gtin.entity.js';
import type { Transaction } from '../../src/platform/database/transaction.js';
import { Container } from '../../src/stock/container.entity.js';
import { Hold } from '../../src/stock/hold.entity.js';
import { Lot } from '../../src/stock/lot.entity.js';
import { LotCode } from '../../src/stock/lot-code.entity.js';
import { Movement } from '../../src/stock/movement.entity.js';
import { Place } from '../../src/stock/place.entity.js';
import { StockLevel } from '../../src/stock/stock-level.entity.js';
import type { SeededRandom } from '../support/random.js';

/** Something an artist takes from the shelf, and what is scanned of it. */
export interface ShelfItem {
  containerId: string;
  productId: string;
  symbol: string;
}

export interface BenchStock {
  cartridges: ShelfItem[];
  bottles: ShelfItem[];
  /** Bottles of recalled lots. */
  recalled: ShelfItem[];
}

const makers = 3;
const cartridgeProducts = 30;
const pigmentProducts = 40;
const recalledProducts = 5;
// More than any round takes, so that no piece runs out and no alert opens: the kinds of requests stay alike.
const piecesInBox = 1_000_000;
const bottleMicrolitres = 100_000_000;
/** Emptied in the past, of each product: the record only grows. */
const pastContainers = 20;
const day = 86_400_000;

const dateIn = (days: number) => new Date(Date.now() + days * day).toISOString().slice(0, 10);
const instantBefore = (days: number) => new Date(Date.now() - days * day).toISOString();

/** Fills the shelves of a studio: boxes of cartridges with a maker's symbol, opened bottles with the studio's own label. */
export async function fillShelves(transaction: Transaction, random: SeededRandom): Promise<BenchStock> {
  const { studioId, recordedAt } = transaction;
  const { chainId } = transaction.actor;
  const placeId = uuidv7();
  await transaction.insert(Place, {
    studioId,
    id: placeId,
    name: 'Shelf',
    kind: 'shelf',
    createdAt: recordedAt,
    archivedAt: null,
  });
  const makerIds = Array.from({ length: makers }, () => uuidv7());
  await transaction.insert(
    Maker,
    makerIds.map((id, index) => ({
      chainId,
      id,
      name: `Maker ${index + 1}`,
      version: 1,
      createdAt: recordedAt,
    })),
  );
  const shelves = new Shelves(transaction, random, placeId, makerIds);
  return {
    cartridges: await shelves.cartridges(cartridgeProducts),
    bottles: await shelves.bottles(pigmentProducts, false),
    recalled: await shelves.bottles(recalledProducts, true),
  };
}

class Shelves {
  private count = 0;

  constructor(
    private readonly transaction: Transaction,
    private readonly random: SeededRandom,
    private readonly placeId: string,
    private readonly makerIds: readonly string[],
  ) {}

  async cartridges(products: number): Promise<ShelfItem[]> {
    const items: ShelfItem[] = [];
    for (let index = 0; index < products; index += 1) {
      const product = await this.product({
        kind: 'cartridge',
        stockForm: 'pieces',
        points: index + 1,
        grouping: 'round liner',
      });
      await this.level(product.id);
      const { lotId, code, useBy } = await this.lot(product.id);
      const { containerId } = await this.container(lotId, 'box', 'sealed', piecesInBox, 0);
      const symbol = `01${product.gtin}17${useBy.slice(2).replaceAll('-', '')}10${code}`;
      items.push({ containerId, productId: product.id, symbol });
    }
    return items;
  }

  async bottles(products: number, recalled: boolean): Promise<ShelfItem[]> {
    const items: ShelfItem[] = [];
    for (let index = 0; index < products; index += 1) {
      const product = await this.product({
        kind: 'pigment',
        stockForm: 'container',
        pigmentRole: 'colour',
        volumeMicrolitres: 15_000,
        openedLife: 'P12M',
        dropMicrolitres: 40,
        shade: `Shade ${index + 1}`,
      });
      const { lotId } = await this.lot(product.id);
      const { containerId, labelCode } = await this.container(
        lotId,
        'bottle',
        'opened',
        1,
        bottleMicrolitres,
      );
      if (recalled) await this.recall(lotId);
      items.push({ containerId, productId: product.id, symbol: labelCode });
    }
    return items;
  }

  private async product(fields: Pick<Product, 'kind' | 'stockForm'> & Partial<Product>) {
    const { transaction } = this;
    const { chainId } = transaction.actor;
    const number = ++this.count;
    const id = uuidv7();
    await transaction.insert(Product, {
      chainId,
      id,
      makerId: this.makerIds[number % this.makerIds.length] ?? '',
      name: `Product ${number}`,
      shade: null,
      pigmentRole: null,
      volumeMicrolitres: null,
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
      createdAt: transaction.recordedAt,
      archivedAt: null,
      ...fields,
    });
    // GTINs beginning 950 are GS1's own examples.
    const digits = `0950${String(number).padStart(9, '0')}`;
    const gtin = digits + checkDigit(digits);
    await transaction.insert(ProductGtin, {
      chainId,
      gtin,
      productId: id,
      contentCount: 1,
      version: 1,
      createdAt: transaction.recordedAt,
    });
    return { id, gtin };
  }

  private level(productId: string): Promise<void> {
    const { studioId, recordedAt } = this.transaction;
    return this.transaction.insert(StockLevel, {
      studioId,
      id: uuidv7(),
      subjectKind: 'product',
      subjectId: productId,
      minimumPieces: 1,
      planId: null,
      version: 1,
      updatedAt: recordedAt,
    });
  }

  private async lot(productId: string) {
    const { transaction } = this;
    const { studioId, recordedAt } = transaction;
    const lotId = uuidv7();
    const code = `L${this.random.below(1_000_000)}`.padEnd(8, 'X');
    const useBy = dateIn(700 + this.random.below(300));
    await transaction.insert(Lot, {
      studioId,
      id: lotId,
      chainId: transaction.actor.chainId,
      productId,
      code,
      codeState: 'printed',
      useBy,
      useByPrecision: 'day',
      manufacturedOn: null,
      origin: 'opening stock',
      version: 1,
      createdAt: recordedAt,
    });
    await transaction.insert(LotCode, {
      studioId,
      id: uuidv7(),
      lotId,
      kind: 'lot',
      code,
      recordedAt,
      supersededAt: null,
    });
    return { lotId, code, useBy };
  }

  /** The container that is in use, after those of the lot that were emptied. */
  private async container(
    lotId: string,
    form: Container['form'],
    state: 'sealed' | 'opened',
    pieces: number,
    microlitres: number,
  ) {
    const { transaction } = this;
    const { studioId, recordedAt } = transaction;
    const past = Array.from({ length: pastContainers }, () => this.containerRow(lotId, form, 'finished'));
    const present = this.containerRow(lotId, form, state);
    await transaction.insert(Container, [...past, present]);
    const { id: containerId, labelCode } = present;
    await transaction.insert(Movement, {
      studioId,
      id: uuidv7(),
      lotId,
      containerId,
      kind: 'received',
      pieces,
      microlitres,
      reversesId: null,
      sessionId: null,
      reason: null,
      occurredAt: recordedAt,
      recordedAt,
      personId: null,
      via: 'system',
    });
    return { containerId, labelCode };
  }

  private containerRow(
    lotId: string,
    form: Container['form'],
    state: 'sealed' | 'opened' | 'finished',
  ): Container {
    return {
      studioId: this.transaction.studioId,
      id: uuidv7(),
      lotId,
      form,
      labelCode: makeLabelCode(Uint8Array.from({ length: 12 }, () => this.random.below(256))),
      placeId: this.placeId,
      ownerId: null,
      state,
      openedAt: state === 'sealed' ? null : instantBefore(10),
      openingToldAt: null,
      usableThrough: null,
      openedBy: null,
      receivedAt: instantBefore(30),
      endedAt: state === 'finished' ? instantBefore(1) : null,
      endedFrom: state === 'finished' ? 'opened' : null,
      version: 1,
    };
  }

  private async recall(lotId: string): Promise<void> {
    const { studioId, recordedAt } = this.transaction;
    await this.transaction.insert(Hold, {
      studioId,
      id: uuidv7(),
      kind: 'recall',
      lotId,
      containerId: null,
      reason: 'recall notice',
      note: null,
      occurredAt: recordedAt,
      recordedAt,
      personId: null,
      via: 'system',
    });
  }
}
