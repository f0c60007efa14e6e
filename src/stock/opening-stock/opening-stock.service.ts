import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { Maker } from '../../catalogue/maker.entity.js';
import { Product } from '../../catalogue/product.entity.js';
import { ProductGtin } from '../../catalogue/product-gtin.entity.js';
import { localDay } from '../../identity/local-day.js';
import { People } from '../../identity/people.service.js';
import { startOfDay } from '../../identity/written-time.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { readCsvTable, type Table } from '../../platform/files/csv-table.js';
import type { JudgeFileDto, TakeInFileDto } from '../../platform/files/file-text.dto.js';
import { unusableFile } from '../../platform/files/unusable-file.js';
import type { DeliveryLineDto } from '../receiving.dto.js';
import { Receiving } from '../receiving.service.js';
import type { ReceiptView } from '../receiving.views.js';
import { OtherEnds } from '../transfers/other-ends.service.js';
import type { OpeningStockPreviewView, TakenInStockView } from './opening-stock.views.js';
import { type OpeningStockColumn, openingStockColumns } from './opening-stock-columns.js';
import {
  type Meant,
  type PlannedRow,
  planOpeningStock,
  type ReadRow,
  type StockOnRecord,
} from './opening-stock-plan.js';
import { countsOf, previewOf } from './opening-stock-preview.js';
import { readStockRow } from './opening-stock-row.js';
import { StockRecordLookUp } from './stock-on-record.service.js';

/**
 * Opening stock from a file: what lies on the shelf before the record begins. Guarantees: a preview writes nothing; a
 * file is taken in whole or not at all, judged again under the write's own locks; what it brings goes through receiving
 * like any delivery, of the origin "opening stock", and is held by the same rules.
 */
@Injectable()
export class OpeningStock {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly people: People,
    private readonly record: StockRecordLookUp,
    private readonly receiving: Receiving,
    private readonly otherEnds: OtherEnds,
  ) {}

  async preview(actor: Actor, { text }: JudgeFileDto): Promise<OpeningStockPreviewView> {
    const now = this.clock.now();
    const { rows, faults } = read(text, localDay(now, actor.timeZone));
    const people = await this.peopleAtWork(actor, rows);
    const record = await this.record.find(this.database.read, actor, rowsOf(rows), people, now);
    const planned = planOpeningStock(rows, record);
    return previewOf(planned, faults, await this.warnings(actor));
  }

  async takeIn(actor: Actor, dto: TakeInFileDto): Promise<TakenInStockView> {
    const told: string[] = [];
    const { rows, faults } = read(dto.text, localDay(this.clock.now(), actor.timeZone));
    const people = await this.peopleAtWork(actor, rows);
    const view = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.take-in-opening-stock',
        subject: { kind: 'delivery', id: dto.id },
        content: dto,
      },
      async (transaction) => {
        // The register stands still until the end, so that what is unknown in it is made once.
        await transaction.lockChain();
        const { recordedAt } = transaction;
        const record = await this.record.find(transaction.read, actor, rowsOf(rows), people, recordedAt);
        const planned = planOpeningStock(rows, record);
        const judged = previewOf(planned, faults, []);
        if (!judged.usable) throw unusableFile(judged);
        const ids = await this.addToRegister(transaction, planned);
        const lines = planned.map((row) => lineOf(row, ids, actor.timeZone));
        const receipt = await this.receiving.inside(
          transaction,
          { id: dto.id, origin: 'opening stock', lines },
          told,
        );
        return takenIn(receipt, planned);
      },
    );
    await this.otherEnds.judge(told);
    return view;
  }

  /** Makers, products and GTINs that rows make. @returns ids of products by the row that makes them */
  private async addToRegister(
    transaction: Transaction,
    planned: readonly PlannedRow[],
  ): Promise<Map<number, string>> {
    const { chainId } = transaction.actor;
    const fresh = { chainId, version: 1, createdAt: transaction.recordedAt };
    const makerIds = new Map<number, string>();
    const productIds = new Map<number, string>();
    const makers: Maker[] = [];
    const products: Product[] = [];
    const gtins: ProductGtin[] = [];
    for (const { number, newMaker, newProduct, newGtin, product } of planned) {
      if (newMaker !== null) {
        const id = uuidv7();
        makerIds.set(number, id);
        makers.push({ ...fresh, id, name: newMaker });
      }
      if (newProduct !== null) {
        const id = uuidv7();
        productIds.set(number, id);
        const { kind, name, stockForm, fields } = newProduct;
        const makerId = idOf(newProduct.maker, makerIds);
        products.push({ ...fresh, id, makerId, kind, name, stockForm, ...fields, archivedAt: null });
      }
      if (newGtin !== null && product !== null) {
        gtins.push({ ...fresh, ...newGtin, productId: idOf(product, productIds) });
      }
    }
    if (makers.length > 0) await transaction.insert(Maker, makers);
    if (products.length > 0) await transaction.insert(Product, products);
    if (gtins.length > 0) await transaction.insert(ProductGtin, gtins);
    return productIds;
  }

  private async peopleAtWork(actor: Actor, rows: readonly ReadRow[]): Promise<StockOnRecord['people']> {
    if (rows.every(({ row }) => row.owner === null)) return [];
    const people = await this.people.list(actor);
    return people.flatMap(({ id, name, state }) =>
      state === 'active' && name !== null ? [{ id, name }] : [],
    );
  }

  private async warnings(actor: Actor): Promise<string[]> {
    const [last] = await this.database.read<{ occurredAt: string }>(
      `SELECT occurred_at AS "occurredAt" FROM delivery WHERE studio_id = $1 AND origin = 'opening stock'
       ORDER BY occurred_at DESC, id DESC LIMIT 1`,
      [actor.studioId],
    );
    if (last === undefined) return [];
    return [
      `Opening stock is on record already, last taken in on ${localDay(last.occurredAt, actor.timeZone)}. This file would come on top of it: leave out what was counted then.`,
    ];
  }
}

function read(text: string, day: string): { rows: ReadRow[]; faults: Table<OpeningStockColumn>['faults'] } {
  const { rows, faults } = readCsvTable(text, openingStockColumns);
  return {
    faults,
    rows: rows.map(({ number, cells, faults: unreadable }) => {
      const { row, faults: own } = readStockRow(cells, day);
      // A cell that could not be read is not also empty.
      const others = unreadable.some(({ column }) => column === null)
        ? []
        : own.filter(({ column }) => !unreadable.some((fault) => fault.column === column));
      return { number, row, faults: [...unreadable, ...others] };
    }),
  };
}

function rowsOf(rows: readonly ReadRow[]): ReadRow['row'][] {
  return rows.map(({ row }) => row);
}

function idOf(meant: Meant, made: ReadonlyMap<number, string>): string {
  const id = 'id' in meant ? meant.id : made.get(meant.madeByRow);
  if (id === undefined) throw new Error('A row refers to one that makes nothing.');
  return id;
}

function lineOf(
  { row, product, placeId, ownerId, piecesEach, remainingMicrolitres }: PlannedRow,
  ids: ReadonlyMap<number, string>,
  timeZone: string,
): DeliveryLineDto {
  const { codes, codeState, useBy, manufacturedOn } = row.saidOfPackage;
  if (product === null || placeId === null || row.quantity === null) {
    throw new Error('A row without faults does not say what is received.');
  }
  return {
    productId: idOf(product, ids),
    ...(codes === undefined ? { codeState } : { codes: [...codes] }),
    useBy,
    manufacturedOn,
    quantity: row.quantity,
    piecesEach,
    placeId,
    ownerId,
    // Opened lives are counted in days; where a label counts hours, the day's beginning is the careful reading.
    openedAt: row.openedOn === null ? null : startOfDay(row.openedOn, timeZone),
    ...(remainingMicrolitres === null ? {} : { remainingMicrolitres }),
    ...(row.sameCodeDecision === null ? {} : { sameCodeDecision: row.sameCodeDecision }),
  };
}

function takenIn(receipt: ReceiptView, planned: readonly PlannedRow[]): TakenInStockView {
  return {
    deliveryId: receipt.id,
    recordedAt: receipt.recordedAt,
    counts: countsOf(planned),
    rows: receipt.lines.map(({ lot, containers, holds, warnings }, index) => ({
      row: planned[index]?.number ?? 0,
      lotId: lot.id,
      newLot: lot.isNew,
      containerIds: containers.map(({ id }) => id),
      setAside: [...new Set(holds.map(({ reason }) => reason))],
      warnings,
    })),
  };
}
