import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { CodeState, LotOrigin, UseByPrecision } from './vocabulary.js';

/** One manufacturing batch of one product. */
@Entity('lot')
export class Lot {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') chainId: string;
  @Column('text') productId: string;
  /** The lot code as printed; null when none is printed or it cannot be read. Every code stands in `lot_code`. */
  @Column('text', { nullable: true }) code: string | null;
  @Column('text') codeState: CodeState;
  /** Last day on which an unopened item may be used; null when none is printed. */
  @Column('text', { nullable: true }) useBy: string | null;
  @Column('text') useByPrecision: UseByPrecision;
  @Column('text', { nullable: true }) manufacturedOn: string | null;
  @Column('text') origin: LotOrigin;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
}
