import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Somebody who signs in; they may be a person in several studios. The studio is the one where they first did. */
@Entity('account')
export class Account {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') dataKeyId: string;
  @Column('text') signInNameSealed: string;
  /** Keyed hash by which the account is found. */
  @Column('text') signInNameHash: string;
  /** PHC string of Argon2id; null for an account that signs in by passkey only. */
  @Column('text', { nullable: true }) passwordHash: string | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
}
