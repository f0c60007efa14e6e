import { Column, Entity, PrimaryColumn } from 'typeorm';

/** By what a person is known on an enrolled tablet: a printed badge, or a PIN they chose. At most one of each works. */
@Entity('tablet_credential')
export class TabletCredential {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') personId: string;
  @Column('text') kind: 'badge' | 'PIN';
  /** SHA-256 of a badge's secret, which has 160 bits; PHC string of Argon2id for a PIN. */
  @Column('text') secretHash: string;
  @Column('text') createdAt: string;
  /** When it was withdrawn, or replaced by another. */
  @Column('text', { nullable: true }) endedAt: string | null;
}
