import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Goods that arrived together. */
@Entity('delivery')
export class Delivery {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') chainId: string;
  /** Null for samples, gifts and opening stock. */
  @Column('text', { nullable: true }) supplierId: string | null;
  @Column('text') origin: 'purchase' | 'gift or sample' | 'opening stock';
  @Column('text', { nullable: true }) orderedOn: string | null;
  @Column('text', { nullable: true }) reference: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}

@Entity('delivery_line')
export class DeliveryLine {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') deliveryId: string;
  @Column('integer') lineNumber: number;
  @Column('text') lotId: string;
  /** Bottles, or pieces in boxes. */
  @Column('integer') quantityPieces: number;
  /** Cost of one piece in the studio's minor unit; null: unknown. */
  @Column('integer', { nullable: true }) unitCostMinor: number | null;
  @Column('text', { nullable: true }) currency: string | null;
  /** Opaque here: the line of an order that this answers. */
  @Column('text', { nullable: true }) orderLineId: string | null;
}
