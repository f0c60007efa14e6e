import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A shared tablet in a treatment room, enrolled by somebody who may: its browser holds a secret. */
@Entity('tablet')
export class Tablet {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  /** Where it lies, or what it looks like. */
  @Column('text') name: string;
  @Column('text') secretHash: string;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) revokedAt: string | null;
}
