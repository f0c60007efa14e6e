import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A link that lets its holder sign in as a person once: for the first owner, for someone invited, for a lost password. */
@Entity('one_time_link')
export class OneTimeLink {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') personId: string;
  @Column('text') purpose: 'set-up' | 'invitation';
  @Column('text') secretHash: string;
  @Column('text') createdAt: string;
  @Column('text') expiresAt: string;
  /** When it was used, or replaced by a newer one. */
  @Column('text', { nullable: true }) endedAt: string | null;
}
