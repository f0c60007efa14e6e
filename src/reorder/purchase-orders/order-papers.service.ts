import { buffer } from 'node:stream/consumers';
import { Injectable, Logger } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import type { OutgoingMail } from '../../alerts/channels/mail/hand-over.service.js';
import { productLabel } from '../../catalogue/product-label.js';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { csvOf } from '../../platform/csv.js';
import { Database } from '../../platform/database/database.js';
import { plainMoney, writtenMoney } from '../written-money.js';
import { OrderDrawing } from './order-drawing.service.js';
import { type OrderFacts, OrderFactsReader } from './order-facts.service.js';
import { lineOfPaper, type PaperOfOrder } from './order-paper.js';

/** A file to be handed out. */
export interface OrderFile {
  name: string;
  content: Buffer;
}

const columns = [
  'order_number',
  'order_date',
  'studio',
  'customer_number',
  'supplier',
  'line',
  'order_code',
  'product',
  'packs',
  'containers_in_pack',
  'pieces_in_container',
  'pieces',
  'pack_price',
  'line_price',
  'currency',
] as const;

/** Writes orders for suppliers: as a document and as a list. */
@Injectable()
export class OrderPapers {
  private readonly logger = new Logger('orders');

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly reader: OrderFactsReader,
    private readonly drawing: OrderDrawing,
  ) {}

  /** @throws Problem not-found */
  async pdf(actor: Actor, orderId: string): Promise<OrderFile> {
    const paper = await this.read(actor, orderId);
    return { name: fileName(paper, 'pdf'), content: await this.drawing.draw(paper) };
  }

  /** @throws Problem not-found */
  async csv(actor: Actor, orderId: string): Promise<OrderFile> {
    const facts = await this.reader.of(this.database.read, actor.studioId, orderId);
    const paper = await this.of(actor, facts, this.clock.now());
    return { name: fileName(paper, 'csv'), content: await this.list(facts, paper, actor.timeZone) };
  }

  /** Both, for a mail. */
  async attachments(
    actor: Actor,
    facts: OrderFacts,
    paper: PaperOfOrder,
  ): Promise<NonNullable<OutgoingMail['attachments']>> {
    return [
      {
        filename: fileName(paper, 'pdf'),
        contentType: 'application/pdf',
        content: await this.drawing.draw(paper),
      },
      {
        filename: fileName(paper, 'csv'),
        contentType: 'text/csv; charset=utf-8',
        content: await this.list(facts, paper, actor.timeZone),
      },
    ];
  }

  /** @param now ISO 8601 instant, the day of an order that was not sent yet */
  async of(actor: Actor, facts: OrderFacts, now: string): Promise<PaperOfOrder> {
    const { order, supplierName, lines, terms, sums } = facts;
    const [studio] = await this.database.read<PaperOfOrder['studio']>(
      'SELECT name, contact_point AS contact FROM studio WHERE id = $1',
      [actor.studioId],
    );
    const { currency } = order;
    const money = (minor: number | null) => (minor === null ? null : writtenMoney(minor, currency));
    return {
      number: order.number,
      madeAt: order.endedAt ?? order.sentAt ?? order.approvedAt ?? order.createdAt,
      day: Temporal.PlainDate.from(localDay(order.sentAt ?? now, actor.timeZone)).toLocaleString('en-GB', {
        dateStyle: 'long',
      }),
      studio: studio ?? { name: '', contact: null },
      supplierName,
      customerNumber: terms.customerNumber,
      isDraft: order.state === 'draft',
      isCalledOff: order.state === 'called off',
      currency,
      lines: lines.map((line) => lineOfPaper(line, productLabel(line), currency)),
      linesSum: writtenMoney(sums.linesMinor, currency),
      deliveryCost: money(sums.deliveryCostMinor),
      total: money(sums.totalMinor),
      unpricedLines: sums.unpricedLines,
    };
  }

  private async read(actor: Actor, orderId: string): Promise<PaperOfOrder> {
    const facts = await this.reader.of(this.database.read, actor.studioId, orderId);
    return this.of(actor, facts, this.clock.now());
  }

  private list({ order, lines }: OrderFacts, paper: PaperOfOrder, timeZone: string): Promise<Buffer> {
    const { currency } = order;
    const orderDate = localDay(order.sentAt ?? this.clock.now(), timeZone);
    async function* rows(): AsyncGenerator<Record<(typeof columns)[number], string | number | null>> {
      for (const [index, line] of paper.lines.entries()) {
        yield {
          order_number: paper.number,
          order_date: orderDate,
          studio: paper.studio.name,
          customer_number: paper.customerNumber,
          supplier: paper.supplierName,
          line: line.lineNumber,
          order_code: line.orderCode,
          product: line.product,
          packs: line.packs,
          containers_in_pack: lines[index]?.packContainers ?? null,
          pieces_in_container: lines[index]?.containerPieces ?? null,
          pieces: line.pieces,
          pack_price: line.packPriceMinor === null ? null : plainMoney(line.packPriceMinor, currency),
          line_price: line.lineMinor === null ? null : plainMoney(line.lineMinor, currency),
          currency,
        };
      }
    }
    return buffer(
      csvOf(columns, rows(), (error) =>
        this.logger.error(`The list of an order broke off: ${error.message}`),
      ),
    );
  }
}

function fileName({ number }: PaperOfOrder, ending: 'pdf' | 'csv'): string {
  return `order-${number}.${ending}`;
}
