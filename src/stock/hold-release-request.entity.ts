import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Somebody asks that a recall hold be released; another person then releases it. */
@Entity('hold_release_request')
export class HoldReleaseRequest {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') holdId: string;
  @Column('text') reason: string;
  /** Where nobody else is there to see it. */
  @Column('text', { nullable: true }) photoId: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
