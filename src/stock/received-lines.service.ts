import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { readSymbol, type SymbolReading } from '../catalogue/barcode.js';
import type { Product } from '../catalogue/product.entity.js';
import { ProductRegister } from '../catalogue/product-register.service.js';
import { localDay } from '../identity/local-day.js';
import type { Transaction } from '../platform/database/transaction.js';
import { occurredAt as acceptedInstant, maximumLateRecordDays } from '../platform/occurred-at.js';
import { type FieldFault, notFound, Problem, type ProblemCode } from '../platform/problem.js';
import { Container } from './container.entity.js';
import { Place } from './place.entity.js';
import { type PlannedContainer, plannedContainers } from './receipt-rules.js';
import { goodsOf, type ScannedGoods, scannedGoods } from './received-goods.js';
import { type PrintedFacts, printedFacts } from './received-line.js';
import { type DeliveryLineDto, mostPiecesInLine } from './receiving.dto.js';

/** So many containers can be labelled and put away from one delivery; beyond it is a slip. */
export const mostContainersInDelivery = 2_000;

/** A line that was understood: which product, what is printed, how many, and what stands on the shelf for it. */
export interface ReceivedLine {
  lineNumber: number;
  dto: DeliveryLineDto;
  product: Product;
  printed: PrintedFacts;
  quantityPieces: number;
  containers: PlannedContainer[];
  openedAt: string | null;
  warnings: string[];
}

interface LineFault extends FieldFault {
  code: ProblemCode;
}

/** Understands the lines of a delivery before anything is written; all faults are told together. */
@Injectable()
export class ReceivedLines {
  constructor(private readonly register: ProductRegister) {}

  /**
   * @param receivedAt instant of the delivery
   * @throws Problem with every fault of every line, or not-found for a product, place or person of another studio
   */
  async understand(
    transaction: Transaction,
    lines: readonly DeliveryLineDto[],
    receivedAt: string,
  ): Promise<ReceivedLine[]> {
    const { chainId, timeZone } = transaction.actor;
    const faults: LineFault[] = [];
    const scanned = await this.scan(transaction, lines, faults);
    const numbers = scanned.flatMap((goods) => (goods ? [goods.gtin] : []));
    const traded = await this.register.gtins(transaction.manager, chainId, numbers);
    const goods = lines.map((line, index) => {
      const read = scanned[index] ?? null;
      if (line.symbol !== undefined && read === null) return null;
      const decided = goodsOf(line.productId, read, read === null ? undefined : traded.get(read.gtin));
      if (!('fault' in decided)) return decided;
      const code = decided.field === 'symbol' ? 'unusable-symbol' : 'invalid-fields';
      faults.push({ code, field: `lines.${index}.${decided.field}`, message: decided.fault });
      return null;
    });
    const productIds = goods.flatMap((known) => (known ? [known.productId] : []));
    const products = await this.register.products(transaction.manager, chainId, productIds);
    await this.refuseForeignPlaces(transaction, lines, faults);
    await this.refuseForeignOwners(transaction, lines);

    const day = localDay(receivedAt, timeZone);
    const understood = lines.flatMap((dto, index): ReceivedLine[] => {
      const at = (code: ProblemCode, field: string, message: string) =>
        faults.push({ code, field: `lines.${index}.${field}`, message });
      const known = goods[index];
      if (!known) return [];
      const product = products.get(known.productId);
      if (!product) throw notFound('product', known.productId);
      const facts = printedFacts(dto, scanned[index]?.printed ?? {}, day);
      if ('faults' in facts) {
        for (const fault of facts.faults) at(fault.code, fault.field, fault.message);
        return [];
      }
      const quantityPieces = dto.quantity * known.piecesEach;
      if (quantityPieces > mostPiecesInLine) {
        const packs = `${dto.quantity} packs of ${known.piecesEach} are ${quantityPieces} pieces`;
        at('unusable-quantity', 'quantity', `${packs}; at most ${mostPiecesInLine} are taken in one line`);
        return [];
      }
      const planned = plannedContainers(
        product.stockForm,
        quantityPieces,
        known.packPieces,
        dto.faults ?? [],
      );
      if ('faultyPieces' in planned) {
        const more = `${planned.faultyPieces} pieces are named as faulty, but ${quantityPieces} came`;
        at('unusable-quantity', 'faults', `${more}; a piece with two faults is named under one`);
        return [];
      }
      const warnings = [...known.warnings];
      if (product.archivedAt !== null) {
        warnings.push(
          'This product is archived: it is not offered any more. Restore it if it is used again.',
        );
      }
      return [
        {
          lineNumber: index + 1,
          dto,
          product,
          printed: facts.facts,
          quantityPieces,
          containers: planned.containers,
          openedAt: this.openedAt(dto, product, receivedAt, transaction, (message) =>
            at('unusable-time', 'openedAt', message),
          ),
          warnings,
        },
      ];
    });
    throwFaults(faults);
    refuseTooManyContainers(understood);
    return understood;
  }

  /** What the symbols say, line by line; null where there is none or it is at fault. */
  private async scan(
    transaction: Transaction,
    lines: readonly DeliveryLineDto[],
    faults: LineFault[],
  ): Promise<(ScannedGoods | null)[]> {
    const today = localDay(transaction.recordedAt, transaction.actor.timeZone);
    const readings = lines.map(({ symbol }) => (symbol === undefined ? null : readSymbol(symbol, today)));
    const ownLabels = await this.ownLabels(transaction, readings);
    return readings.map((reading, index) => {
      if (reading === null) return null;
      const scanned = scannedGoods(reading, (code) => ownLabels.has(code));
      if (!('fault' in scanned)) return scanned;
      faults.push({ code: 'unusable-symbol', field: `lines.${index}.symbol`, message: scanned.fault });
      return null;
    });
  }

  /** Of the label codes that were read, those that a container carries. */
  private async ownLabels(
    transaction: Transaction,
    readings: readonly (SymbolReading | null)[],
  ): Promise<ReadonlySet<string>> {
    const codes = readings.flatMap((reading) => (reading?.kind === 'own label' ? [reading.code] : []));
    if (codes.length === 0) return new Set();
    const containers = await transaction.manager.find(Container, {
      select: { studioId: true, id: true, labelCode: true },
      where: { studioId: transaction.studioId, labelCode: In([...new Set(codes)]) },
    });
    return new Set(containers.map(({ labelCode }) => labelCode));
  }

  private openedAt(
    dto: DeliveryLineDto,
    product: Product,
    receivedAt: string,
    transaction: Transaction,
    fault: (message: string) => void,
  ): string | null {
    if (dto.openedAt === undefined || dto.openedAt === null) return null;
    if (product.stockForm !== 'container') {
      fault('only what is kept in containers comes opened; each of these pieces is used once');
      return null;
    }
    const openedAt = acceptedInstant(dto.openedAt, transaction.recordedAt, maximumLateRecordDays);
    if (openedAt > receivedAt) {
      fault(
        `opened at ${openedAt} lies after the receipt at ${receivedAt}; record the opening when it happens`,
      );
    }
    return openedAt;
  }

  private async refuseForeignPlaces(
    transaction: Transaction,
    lines: readonly DeliveryLineDto[],
    faults: LineFault[],
  ): Promise<void> {
    const ids = [...new Set(lines.map((line) => line.placeId))];
    const found = await transaction.manager.find(Place, {
      where: { studioId: transaction.studioId, id: In(ids) },
    });
    const places = new Map(found.map((place) => [place.id, place]));
    for (const [index, { placeId }] of lines.entries()) {
      const place = places.get(placeId);
      if (!place) throw notFound('place', placeId);
      if (place.archivedAt !== null) {
        const message = `"${place.name}" is archived; choose a place that is in use`;
        faults.push({ code: 'invalid-fields', field: `lines.${index}.placeId`, message });
      }
    }
  }

  private async refuseForeignOwners(
    transaction: Transaction,
    lines: readonly DeliveryLineDto[],
  ): Promise<void> {
    const ids = [...new Set(lines.flatMap(({ ownerId }) => (ownerId == null ? [] : [ownerId])))];
    if (ids.length === 0) return;
    const found = await transaction.query<{ id: string }>(
      `SELECT id FROM person WHERE studio_id = $1 AND state = 'active'
         AND id IN (${ids.map((_, index) => `$${index + 2}`).join(', ')})`,
      [transaction.studioId, ...ids],
    );
    const people = new Set(found.map((person) => person.id));
    for (const id of ids) if (!people.has(id)) throw notFound('person at work', id);
  }
}

function throwFaults(faults: readonly LineFault[]): void {
  const [first] = faults;
  if (!first) return;
  const sameCode = faults.every((fault) => fault.code === first.code);
  throw new Problem(
    400,
    sameCode ? first.code : 'invalid-fields',
    faults.length === 1
      ? `${first.field}: ${first.message}.`
      : `${faults.length} fields cannot be accepted; see faults.`,
    { faults: faults.map(({ field, message }) => ({ field, message })) },
  );
}

function refuseTooManyContainers(lines: readonly ReceivedLine[]): void {
  const containers = lines.reduce((sum, line) => sum + line.containers.length, 0);
  if (containers <= mostContainersInDelivery) return;
  throw new Problem(
    400,
    'unusable-quantity',
    `This delivery would make ${containers} containers; at most ${mostContainersInDelivery} are taken at a time. Check the quantities, or record it in parts.`,
  );
}
