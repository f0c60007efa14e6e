import { Column, Entity, PrimaryColumn } from 'typeorm';

/** At or below this usable, in-date quantity a product or a configuration is low. */
@Entity('stock_level')
export class StockLevel {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') subjectKind: 'product' | 'configuration';
  /** A product id, or the key of a configuration pool. */
  @Column('text') subjectId: string;
  @Column('integer') minimumPieces: number;
  /** The plan that set it; null: somebody did by hand. */
  @Column('text', { nullable: true }) planId: string | null;
  @Column('integer') version: number;
  @Column('text') updatedAt: string;
}
