import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { readSymbol, type SymbolReading } from '../catalogue/barcode.js';
import type { Product } from '../catalogue/product.entity.js';
import { ProductRegister } from '../catalogue/product-register.service.js';
import { localDay } from '../identity/local-day.js';
import type { Transaction } from '../platform/database/transaction.js';
import { occurredAt as acceptedInstant, maximumLateRecordDays } from '../platform/occurred-at.js';
import { type FieldFault, faultsProblem, notFound, Problem, type ProblemCode } from '../platform/problem.js';
import { Container } from './container.entity.js';
import {
  mostContainersInDelivery,
  mostPiecesInLine,
  type PlannedContainer,
  plannedContainers,
} from './planned-containers.js';
import { type PrintedFacts, printedFacts } from './printed-facts.js';
import { goodsOf, type ScannedGoods, scannedGoods } from './received-goods.js';
import type { DeliveryLineDto } from './receiving.dto.js';
import { StandingPlaces } from './standing-places.service.js';

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
  constructor(
    private readonly register: ProductRegister,
    private readonly places: StandingPlaces,
  ) {}

  /**
   * @param receivedAt instant of the delivery
   * @throws Problem with every fault of every line, not-found for a product, place or person of another studio,
   * or wrong-state for a place or person that is no longer here
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
      if (line.symbol !== undefined && line.piecesEach !== undefined) {
        const message = 'the symbol tells it; leave one of the two out';
        faults.push({ code: 'invalid-fields', field: `lines.${index}.piecesEach`, message });
        return null;
      }
      const decided = goodsOf(
        line.productId,
        read,
        read === null ? undefined : traded.get(read.gtin),
        line.piecesEach,
      );
      if (!('fault' in decided)) return decided;
      const code = decided.field === 'symbol' ? 'unusable-symbol' : 'invalid-fields';
      faults.push({ code, field: `lines.${index}.${decided.field}`, message: decided.fault });
      return null;
    });
    const productIds = goods.flatMap((known) => (known ? [known.productId] : []));
    const products = await this.register.products(transaction.manager, chainId, productIds);
    await this.places.checkPlaces(
      transaction,
      lines.map(({ placeId }) => placeId),
    );
    await this.places.checkOwners(
      transaction,
      lines.flatMap(({ ownerId }) => ownerId ?? []),
    );

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
      const leftFault = remainingFault(dto, product);
      if (leftFault !== null) at('unusable-quantity', 'remainingMicrolitres', leftFault);
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
    if (faults.length > 0) throw faultsProblem(faults);
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
}

function remainingFault(
  { remainingMicrolitres, openedAt }: DeliveryLineDto,
  { kind, volumeMicrolitres }: Product,
): string | null {
  if (remainingMicrolitres === undefined) return null;
  if (kind !== 'pigment' || openedAt == null) {
    return 'only a pigment that comes opened has less in it than its label says; leave it out';
  }
  return remainingMicrolitres <= (volumeMicrolitres ?? 0)
    ? null
    : `${remainingMicrolitres} µL are more than the ${volumeMicrolitres} µL of its label`;
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
