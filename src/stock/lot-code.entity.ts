import { Column, Entity, PrimaryColumn } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import type { Transaction } from '../platform/database/transaction.js';
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

/** A printed code that stands for a lot from now on. */
export function newLotCode(
  { studioId, recordedAt }: Transaction,
  lotId: string,
  { kind, code }: Pick<LotCode, 'kind' | 'code'>,
): LotCode {
  return { studioId, id: uuidv7(), lotId, kind, code, recordedAt, supersededAt: null };
}
