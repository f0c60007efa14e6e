import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Whoever sold goods to the studio. */
@Entity('supplier')
export class Supplier {
  @PrimaryColumn('text') chainId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') name: string;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
}
