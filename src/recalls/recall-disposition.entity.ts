import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { DispositionKind } from './vocabulary.js';

/** What became of held stock, seen by a witness or in a photo. */
@Entity('recall_disposition')
export class RecallDisposition {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') recallId: string;
  @Column('text') containerId: string;
  @Column('text') kind: DispositionKind;
  /** Null: the book had nothing left of it. */
  @Column('text', { nullable: true }) movementId: string | null;
  @Column('integer') pieces: number;
  /** An estimate. */
  @Column('integer') microlitres: number;
  @Column('text', { nullable: true }) witnessId: string | null;
  @Column('text', { nullable: true }) photoId: string | null;
  /** Consignment or certificate number. */
  @Column('text') reference: string;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
