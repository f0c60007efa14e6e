import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { OrderEnding, OrderMailState, PurchaseOrderState } from './order-states.js';

/** What the studio orders of one supplier. */
@Entity('purchase_order')
export class PurchaseOrder {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') chainId: string;
  /** Counted by studio, from 1. */
  @Column('integer') number: number;
  @Column('text') supplierId: string;
  @Column('text') state: PurchaseOrderState;
  /** The plan it was drafted from. */
  @Column('text', { nullable: true }) planId: string | null;
  @Column('text') currency: string;
  /** Of a draft: written by hand, else null and by the supplier's terms; from the approval on what was approved. */
  @Column('integer', { nullable: true }) deliveryCostMinor: number | null;
  @Column('text', { nullable: true }) approvedBy: string | null;
  @Column('text', { nullable: true }) approvedAt: string | null;
  @Column('text', { nullable: true }) sentAs: 'mail' | 'by hand' | null;
  @Column('text', { nullable: true }) sentAt: string | null;
  /** What it, or its rest, is expected with. */
  @Column('text', { nullable: true }) expectedDeliveryId: string | null;
  @Column('text', { nullable: true }) endedAt: string | null;
  @Column('text', { nullable: true }) endedAs: OrderEnding | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
}

/** One product of a purchase order. What came of it stands in the lines of deliveries. */
@Entity('purchase_order_line')
export class PurchaseOrderLine {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') orderId: string;
  @Column('integer') lineNumber: number;
  @Column('text') chainId: string;
  @Column('text') productId: string;
  @Column('text', { nullable: true }) offerId: string | null;
  @Column('text', { nullable: true }) orderCode: string | null;
  @Column('integer') packs: number;
  @Column('integer') packContainers: number;
  @Column('integer') containerPieces: number;
  @Column('integer', { nullable: true }) packPriceMinor: number | null;
  /** Taken off while it was a draft. */
  @Column('text', { nullable: true }) removedAt: string | null;
}

/** A mail with an order that somebody asked for. It is tried until the mail server takes it, or is given up visibly. */
@Entity('purchase_order_mail')
export class PurchaseOrderMail {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') orderId: string;
  @Column('text') state: OrderMailState;
  /** The day that somebody named for the arrival; null: by the supplier's lead time. */
  @Column('text', { nullable: true }) expectedOn: string | null;
  /** Attempts whose end is known. */
  @Column('integer') attempts: number;
  /** Attempts that were begun, those that a stop cut off included. */
  @Column('integer') begun: number;
  /** Not before; while an attempt is under way: when it must be over. */
  @Column('text') nextAttemptAt: string;
  @Column('text', { nullable: true }) lastError: string | null;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) settledAt: string | null;
}
