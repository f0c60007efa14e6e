import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A training course for which the kit list of a procedure is needed once for each trainee. */
@Entity('training_course')
export class TrainingCourse {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') procedureId: string;
  @Column('text') heldOn: string;
  @Column('integer') trainees: number;
  /** The studio's own name or number of it; names nobody. */
  @Column('text', { nullable: true }) reference: string | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) cancelledAt: string | null;
}
