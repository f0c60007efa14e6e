import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A GTIN under which a product is traded: its unit (content 1) or an outer pack. */
@Entity('product_gtin')
export class ProductGtin {
  @PrimaryColumn('text') chainId: string;
  /** 14 digits. */
  @PrimaryColumn('text') gtin: string;
  @Column('text') productId: string;
  /** Pieces inside. */
  @Column('integer') contentCount: number;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
}
