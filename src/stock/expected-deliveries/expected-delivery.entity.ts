import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Goods that were ordered and are expected on a day. */
@Entity('expected_delivery')
export class ExpectedDelivery {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') chainId: string;
  @Column('text') supplierId: string;
  /** The supplier's or the studio's number of the order. */
  @Column('text', { nullable: true }) reference: string | null;
  @Column('text', { nullable: true }) orderedOn: string | null;
  @Column('text') expectedOn: string;
  @Column('text', { nullable: true }) endedAt: string | null;
  @Column('text', { nullable: true }) endedAs: 'received' | 'called off' | null;
  /** The delivery it came with. */
  @Column('text', { nullable: true }) deliveryId: string | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  /** 1: a person named the day; 0: it follows from how long the supplier takes; null: nobody noted that. */
  @Column('integer', { nullable: true }) daySaid: 0 | 1 | null;
}
