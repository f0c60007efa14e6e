import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { ClaimReason, ClaimState } from './vocabulary.js';

/** What a supplier is asked to make good. */
@Entity('supplier_claim')
export class SupplierClaim {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') chainId: string;
  @Column('text') supplierId: string;
  @Column('text', { nullable: true }) orderLineId: string | null;
  @Column('text', { nullable: true }) deliveryLineId: string | null;
  @Column('text', { nullable: true }) lotId: string | null;
  @Column('text') reason: ClaimReason;
  @Column('integer') pieces: number;
  @Column('integer', { nullable: true }) amountMinor: number | null;
  @Column('text', { nullable: true }) currency: string | null;
  @Column('text') state: ClaimState;
  @Column('integer', { nullable: true }) settledMinor: number | null;
  @Column('text', { nullable: true }) dataKeyId: string | null;
  @Column('text', { nullable: true }) noteSealed: string | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) sentAt: string | null;
  @Column('text', { nullable: true }) endedAt: string | null;
}
