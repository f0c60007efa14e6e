import { Column, Entity, PrimaryColumn } from 'typeorm';

/** The sum of a container's movements, kept by a trigger of the database; never below zero. */
@Entity('balance')
export class Balance {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') containerId: string;
  @Column('text') lotId: string;
  @Column('integer') pieces: number;
  /** An estimate; zero for what is counted in pieces only. */
  @Column('integer') microlitres: number;
}
