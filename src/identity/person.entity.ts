import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Role } from './permissions.js';

/** Someone with a role in the studio; a session's artist is a person. Role, state and end are their permission. */
@Entity('person')
export class Person {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') dataKeyId: string;
  @Column('text') nameSealed: string;
  @Column('text') role: Role;
  @Column('text') state: 'active' | 'left';
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  /** Null until somebody signs in as this person. */
  @Column('text', { nullable: true }) accountId: string | null;
  /** The last local day on which the person may do anything; null: no end. */
  @Column('text', { nullable: true }) until: string | null;
}
