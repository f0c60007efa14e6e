import { Column, Entity, PrimaryColumn } from 'typeorm';

/** How often a studio rehearses a recall. */
@Entity('drill_schedule')
export class DrillSchedule {
  @PrimaryColumn('text') studioId: string;
  @Column('integer', { nullable: true }) everyMonths: number | null;
  @Column('text', { nullable: true }) nextOn: string | null;
  @Column('integer') version: number;
  @Column('text') updatedAt: string;
}
