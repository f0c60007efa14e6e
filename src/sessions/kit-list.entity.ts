import { Column, Entity, PrimaryColumn } from 'typeorm';

/** What a procedure normally needs on the tray, for one artist or (artist null) for all. */
@Entity('kit_list')
export class KitList {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') procedureId: string;
  @Column('text', { nullable: true }) artistId: string | null;
  @Column('simple-json') items: KitItem[];
  @Column('integer') version: number;
  @Column('text') updatedAt: string;
}

export interface KitItem {
  /** Exactly one of product and configuration is named. */
  productId: string | null;
  /** Key of a configuration pool. */
  configuration: string | null;
  quantity: number;
}
