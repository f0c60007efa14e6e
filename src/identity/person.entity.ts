import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Someone who works in the studio; a session's artist is a person. */
@Entity('person')
export class Person {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') dataKeyId: string;
  @Column('text') nameSealed: string;
  @Column('text') role: 'owner' | 'manager' | 'artist';
  @Column('text') state: 'active' | 'left';
  @Column('integer') version: number;
  @Column('text') createdAt: string;
}
