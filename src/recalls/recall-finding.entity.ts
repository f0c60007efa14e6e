import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { FindingResult } from './vocabulary.js';

/** Somebody looked for a held container; the latest counts. */
@Entity('recall_finding')
export class RecallFinding {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') recallId: string;
  @Column('text') containerId: string;
  @Column('text') result: FindingResult;
  /** Where it was put aside. */
  @Column('text', { nullable: true }) placeId: string | null;
  /** What was written on the tag. */
  @Column('text', { nullable: true }) tag: string | null;
  @Column('text', { nullable: true }) photoId: string | null;
  @Column('text', { nullable: true }) note: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
