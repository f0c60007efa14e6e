import { Column, Entity, PrimaryColumn } from 'typeorm';

/** On what terms a supplier delivers to the studio. */
@Entity('supplier_terms')
export class SupplierTerms {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') supplierId: string;
  @Column('text') chainId: string;
  /** Days from ordering to arrival, as the supplier says; null: it says none. */
  @Column('integer', { nullable: true }) quotedLeadTimeDays: number | null;
  /** ISO weekdays (1 Monday – 7 Sunday) on which orders are placed; none: any day. */
  @Column('simple-json') orderWeekdays: number[];
  @Column('integer', { nullable: true }) minimumOrderMinor: number | null;
  @Column('integer', { nullable: true }) deliveryCostMinor: number | null;
  @Column('integer', { nullable: true }) freeDeliveryFromMinor: number | null;
  @Column('text') currency: string;
  @Column('text', { nullable: true }) dataKeyId: string | null;
  /** JSON of where orders are sent (mail address, our customer number); null: nothing is known. */
  @Column('text', { nullable: true }) contactSealed: string | null;
  @Column('integer') version: number;
  @Column('text') updatedAt: string;
}
