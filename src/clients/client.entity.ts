import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A client; everything personal is sealed under a data key of their own. */
@Entity('client')
export class Client {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  /** A short code that says nothing of the person, for screens at arm's length: `7KQ2-M4`. */
  @Column('text') reference: string;
  @Column('text') dataKeyId: string;
  @Column('text', { nullable: true }) nameSealed: string | null;
  @Column('text', { nullable: true }) contactSealed: string | null;
  @Column('text', { nullable: true }) noteSealed: string | null;
  @Column('text', { nullable: true }) nameHash: string | null;
  @Column('text', { nullable: true }) contactHash: string | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) erasedAt: string | null;
}
