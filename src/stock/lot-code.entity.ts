import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { LotCodeKind } from './vocabulary.js';

/** A code printed for a lot. A corrected code stays, marked as superseded, so that a recall finds both. */
@Entity('lot_code')
export class LotCode {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') lotId: string;
  @Column('text') kind: LotCodeKind;
  @Column('text') code: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) supersededAt: string | null;
}
