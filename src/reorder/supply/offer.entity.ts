import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { PackPrice } from './pack-price.js';

/** A product as one supplier sells it: in packs of so many containers. */
@Entity('offer')
export class Offer {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') chainId: string;
  @Column('text') supplierId: string;
  @Column('text') productId: string;
  /** The supplier's own number of it. */
  @Column('text', { nullable: true }) orderCode: string | null;
  @Column('integer') packContainers: number;
  /** Pieces in each container; 1 for a bottle. */
  @Column('integer') containerPieces: number;
  @Column('integer') minimumPacks: number;
  /** By rising number of packs; the first is from the minimum. */
  @Column('simple-json') prices: PackPrice[];
  @Column('text') currency: string;
  /** Days an unopened container usually still has when it arrives; null: it is learnt, or assumed. */
  @Column('integer', { nullable: true }) lifeOnArrivalDays: number | null;
  /** Where it differs from the supplier's. */
  @Column('integer', { nullable: true }) leadTimeDays: number | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) endedAt: string | null;
}
