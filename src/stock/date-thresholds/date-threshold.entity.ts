import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Days of warning for one product, where they are not the studio's. */
@Entity('date_threshold')
export class DateThreshold {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') productId: string;
  @Column('text') chainId: string;
  /** Null: the studio's. */
  @Column('integer', { nullable: true }) useByNearDays: number | null;
  /** Null: the studio's. */
  @Column('integer', { nullable: true }) openedLifeEndingDays: number | null;
  @Column('integer') version: number;
  @Column('text') updatedAt: string;
}
