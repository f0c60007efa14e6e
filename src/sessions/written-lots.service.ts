import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Product } from '../catalogue/product.entity.js';
import { ProductRegister } from '../catalogue/product-register.service.js';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { Container } from '../stock/container.entity.js';
import { LabelCodes } from '../stock/label-codes.service.js';
import { Lot } from '../stock/lot.entity.js';
import { LotCode, newLotCode } from '../stock/lot-code.entity.js';
import { Place } from '../stock/place.entity.js';
import { readUseBy, type UseBy } from '../stock/use-by.js';
import type { LateUseDto } from './late-records.dto.js';
import { type SplitLot, SplitLots } from './split-lots.service.js';
import { type LotOnRecord, matchWrittenLot, sistersOf, type WrittenLot } from './written-lot-match.js';

/** What was written down of a label, and for which use. */
interface WrittenLabel extends WrittenLot {
  index: number;
  codeState: Lot['codeState'];
  useByPrecision: Lot['useByPrecision'];
}

/**
 * Finds the lots that a paper note names by product, code and use-by date, and makes those that are not on record: what
 * touched a client is recorded whether or not it ever was in stock.
 */
@Injectable()
export class WrittenLots {
  constructor(
    private readonly register: ProductRegister,
    private readonly labelCodes: LabelCodes,
    private readonly splitLots: SplitLots,
  ) {}

  /**
   * @returns lot ids by the index of the use, the lots that were made, and what is to be told of them
   * @throws Problem invalid-fields, unusable-date; not-found when the register has not the product
   */
  async find(
    transaction: Transaction,
    uses: readonly LateUseDto[],
  ): Promise<{ lotIds: Map<number, string>; made: Lot[]; warnings: string[] }> {
    const labels = uses.flatMap((use, index) => labelOf(use, index));
    const lotIds = new Map<number, string>();
    const made: Lot[] = [];
    const splits: SplitLot[] = [];
    if (labels.length === 0) return { lotIds, made, warnings: [] };
    const productIds = [...new Set(labels.map((label) => label.productId))];
    const products = await this.register.products(transaction.manager, transaction.actor.chainId, productIds);
    const unknown = productIds.find((id) => !products.has(id));
    if (unknown !== undefined) throw notFound('product', unknown);
    // As at receipt: two that write down the same new lot must not both make it.
    await transaction.lock('product', productIds);
    const known = await this.lotsWithCode(transaction, labels);
    for (const label of labels) {
      const same = matchWrittenLot(label, known);
      if (same !== null) {
        lotIds.set(label.index, same);
        continue;
      }
      const lot = newLot(transaction, label);
      made.push(lot);
      const sisters = sistersOf(label, known);
      if (sisters.length > 0) splits.push({ lot, sisters });
      known.push({ lotId: lot.id, productId: lot.productId, useBy: lot.useBy, code: lot.code });
      lotIds.set(label.index, lot.id);
    }
    await this.write(transaction, made, products);
    return { lotIds, made, warnings: await this.splitLots.tell(transaction, splits) };
  }

  /**
   * A container for each of the lots to be booked on: one of bottles or a box that is over, for nobody says that any of
   * it is still there.
   */
  async makeContainers(
    transaction: Transaction,
    lots: readonly { id: string; stockForm: Product['stockForm'] }[],
    endedAt: string,
  ): Promise<Map<string, string>> {
    if (lots.length === 0) return new Map();
    const placeId = await this.firstPlace(transaction);
    const labelCodes = await this.labelCodes.make(transaction, lots.length);
    const containers = lots.map((lot, index): Container => {
      const bottle = lot.stockForm === 'container';
      return {
        studioId: transaction.studioId,
        id: uuidv7(),
        lotId: lot.id,
        form: bottle ? 'bottle' : 'box',
        labelCode: labelCodes[index] ?? '',
        placeId,
        ownerId: null,
        state: 'finished',
        openedAt: bottle ? endedAt : null,
        openedBy: null,
        receivedAt: endedAt,
        endedAt,
        openingToldAt: null,
        usableThrough: null,
        endedFrom: bottle ? 'opened' : 'sealed',
        version: 1,
      };
    });
    await transaction.insert(Container, containers);
    return new Map(containers.map((container) => [container.lotId, container.id]));
  }

  private async write(
    transaction: Transaction,
    lots: readonly Lot[],
    products: ReadonlyMap<string, Product>,
  ): Promise<void> {
    if (lots.length === 0) return;
    await transaction.insert(Lot, [...lots]);
    const codes = lots.flatMap(({ id, code }) => (code === null ? [] : [{ lotId: id, code }]));
    if (codes.length > 0) {
      await transaction.insert(
        LotCode,
        codes.map(({ lotId, code }) => newLotCode(transaction, lotId, { kind: 'lot', code })),
      );
    }
    transaction.note({
      madeLots: lots.map(({ id, productId }) => ({ id, product: products.get(productId)?.name ?? null })),
    });
  }

  private async lotsWithCode(
    transaction: Transaction,
    labels: readonly WrittenLabel[],
  ): Promise<LotOnRecord[]> {
    const codes = [...new Set(labels.flatMap((label) => label.code ?? []))];
    if (codes.length === 0) return [];
    const productIds = [...new Set(labels.map((label) => label.productId))];
    return transaction.query<LotOnRecord>(
      `SELECT lot.id AS "lotId", lot.product_id AS "productId", lot.use_by AS "useBy", lot_code.code
       FROM lot_code JOIN lot ON lot.studio_id = lot_code.studio_id AND lot.id = lot_code.lot_id
       WHERE lot_code.studio_id = $1 AND lot_code.code IN (${placeholders(codes)})
         AND lot.product_id IN (${placeholders(productIds, codes.length + 2)})
       ORDER BY lot.created_at, lot.id`,
      [transaction.studioId, ...codes, ...productIds],
    );
  }

  private async firstPlace(transaction: Transaction): Promise<string> {
    const { studioId, recordedAt } = transaction;
    const [place] = await transaction.query<{ id: string }>(
      `SELECT id FROM place WHERE studio_id = $1
       ORDER BY CASE WHEN archived_at IS NULL THEN 0 ELSE 1 END, created_at, id LIMIT 1`,
      [studioId],
    );
    if (place) return place.id;
    const id = uuidv7();
    await transaction.insert(Place, {
      studioId,
      id,
      name: 'Shelf',
      kind: 'shelf',
      createdAt: recordedAt,
      archivedAt: null,
    });
    return id;
  }
}

function labelOf(use: LateUseDto, index: number): WrittenLabel[] {
  const { productId, code = null, codeState, useBy: writtenUseBy = null } = use;
  if (productId === undefined) return [];
  if ((code === null) === (codeState === undefined)) {
    throw invalidField(
      `uses.${index}.code`,
      `${code === null ? 'Neither' : 'Both'} code and codeState were given. Give the lot code as written, or say that none was printed or that it cannot be read.`,
    );
  }
  let useBy: UseBy | null = null;
  if (writtenUseBy !== null) {
    const reading = readUseBy(writtenUseBy);
    if ('error' in reading) {
      throw new Problem(400, 'unusable-date', reading.error.message, { field: `uses.${index}.useBy` });
    }
    useBy = reading;
  }
  return [
    {
      index,
      productId,
      code,
      codeState: codeState ?? 'printed',
      useBy: useBy?.lastDay ?? null,
      useByPrecision: useBy?.precision ?? 'none printed',
    },
  ];
}

function newLot(transaction: Transaction, label: WrittenLabel): Lot {
  return {
    studioId: transaction.studioId,
    id: uuidv7(),
    chainId: transaction.actor.chainId,
    productId: label.productId,
    code: label.code,
    codeState: label.codeState,
    useBy: label.useBy,
    useByPrecision: label.useByPrecision,
    manufacturedOn: null,
    origin: 'late record',
    version: 1,
    createdAt: transaction.recordedAt,
  };
}
