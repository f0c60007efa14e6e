import { Column, Entity, PrimaryColumn } from 'typeorm';

/** When a step of answering a recall, or of rehearsing it, was done. */
@Entity('recall_step')
export class RecallStep {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') recallId: string;
  @Column('text') step: string;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
