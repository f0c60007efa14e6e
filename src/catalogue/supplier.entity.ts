import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Whoever sold goods to the studio. */
@Entity('supplier')
export class Supplier {
  @PrimaryColumn('text') chainId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') name: string;
  @Column('text') createdAt: string;
}
