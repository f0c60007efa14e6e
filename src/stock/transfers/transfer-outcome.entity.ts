import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { PieceFault } from '../planned-containers.js';

export const outcomeKinds = ['arrived', 'turned up', 'withdrawn'] as const;
export type OutcomeKind = (typeof outcomeKinds)[number];

/**
 * What became of a line, said by the studio that knows: the receiver that it arrived, the sender that it never left. A
 * line ends once; only what was lost may turn up afterwards.
 */
@Entity('transfer_outcome')
export class TransferOutcome {
  /** Whoever says so. */
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') senderId: string;
  @Column('text') receiverId: string;
  @Column('text') lineId: string;
  @Column('text') kind: OutcomeKind;
  /** Sent and not arrived; negative for what had been lost and turned up. */
  @Column('integer') lostPieces: number;
  @Column('integer') lostMicrolitres: number;
  @Column('text', { nullable: true }) reason: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}

/** The container that goods of a line came into: a new one at the receiver, the old one when they were called back. */
@Entity('transfer_goods')
export class TransferGoods {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') outcomeId: string;
  @Column('text') lotId: string;
  @Column('text') containerId: string;
  /** What came into it by the line; null when all of it is surplus. */
  @Column('text', { nullable: true }) movementId: string | null;
  @Column('integer') pieces: number;
  @Column('integer') microlitres: number;
  /** Pieces that arrived beyond what was sent, booked as an adjustment. */
  @Column('integer') surplusPieces: number;
  /** What it was put aside for on arrival. */
  @Column('text', { nullable: true }) fault: PieceFault | null;
  @Column('text') recordedAt: string;
}
