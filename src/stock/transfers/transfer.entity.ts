import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { PrintedCode } from '../printed-facts.js';
import type {
  CodeState,
  ContainerForm,
  HoldKind,
  HoldReason,
  PresentState,
  UseByPrecision,
} from '../vocabulary.js';

/** Goods sent to another studio of the chain. A row of the sending studio; both ends may read it. */
@Entity('transfer')
export class Transfer {
  /** The sending studio. */
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') chainId: string;
  @Column('text') receiverId: string;
  @Column('text') reason: string;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}

/** One container, or pieces of a box, as it was sent. */
@Entity('transfer_line')
export class TransferLine {
  /** The sending studio. */
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') transferId: string;
  @Column('text') receiverId: string;
  @Column('integer') lineNumber: number;
  @Column('text') chainId: string;
  @Column('text') productId: string;
  @Column('text') lotId: string;
  @Column('text') containerId: string;
  /** What it left the sender's shelf by. */
  @Column('text') movementId: string;
  /** The sender's label, which may still stick on it. */
  @Column('text') labelCode: string;
  @Column('text') form: ContainerForm;
  @Column('text') state: PresentState;
  @Column('integer') pieces: number;
  @Column('integer') microlitres: number;
  @Column('text') recordedAt: string;
}

/** A hold that stands in the sending studio on what was sent. */
export interface ToldHold {
  kind: HoldKind;
  reason: HoldReason;
  on: 'container' | 'lot';
}

/**
 * What the sending studio knows of goods it sent, as it stood from `recordedAt` on: the receiver reads this and none of
 * the sender's own rows. Each change makes another row; the highest revision counts.
 */
@Entity('transfer_line_facts')
export class TransferLineFacts {
  /** The sending studio. */
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') lineId: string;
  @Column('integer') revision: number;
  @Column('text', { nullable: true }) code: string | null;
  @Column('text') codeState: CodeState;
  @Column('simple-json') codes: PrintedCode[];
  @Column('text', { nullable: true }) useBy: string | null;
  @Column('text') useByPrecision: UseByPrecision;
  @Column('text', { nullable: true }) manufacturedOn: string | null;
  @Column('text', { nullable: true }) openedAt: string | null;
  /** The end of its opened life as the sender judges it: a day, or an instant for a life in hours; null: none is known. */
  @Column('text', { nullable: true }) usableThrough: string | null;
  @Column('simple-json') holds: ToldHold[];
  @Column('text') recordedAt: string;
}
