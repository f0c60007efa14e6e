import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { MovementKind } from './vocabulary.js';

/** One signed change of quantity. Never altered: a mistake is reversed by another that names it. */
@Entity('movement')
export class Movement {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  /** The server's order of recording. */
  @Column('integer', { generated: 'increment' }) sequence?: number;
  @Column('text') lotId: string;
  @Column('text') containerId: string;
  @Column('text') kind: MovementKind;
  /** Signed. A bottle is one piece. */
  @Column('integer') pieces: number;
  /** Signed estimate. */
  @Column('integer') microlitres: number;
  @Column('text', { nullable: true }) reversesId: string | null;
  @Column('text', { nullable: true }) sessionId: string | null;
  /** Why: a word of the room that wrote it, such as `more than labelled`, or a person's reason. */
  @Column('text', { nullable: true }) reason: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
