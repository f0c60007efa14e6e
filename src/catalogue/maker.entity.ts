import { Column, Entity, PrimaryColumn } from 'typeorm';

/** The brand whose name and batch code are on the label. */
@Entity('maker')
export class Maker {
  @PrimaryColumn('text') chainId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') name: string;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
}
