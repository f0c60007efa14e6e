import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { HoldKind, HoldReason } from './vocabulary.js';

/** A lot or a container may not be used until this is released. Never changed; its release is a row of its own. */
@Entity('hold')
export class Hold {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') kind: HoldKind;
  /** Exactly one of lot and container is named. */
  @Column('text', { nullable: true }) lotId: string | null;
  @Column('text', { nullable: true }) containerId: string | null;
  @Column('text') reason: HoldReason;
  @Column('text', { nullable: true }) note: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}

@Entity('hold_release')
export class HoldRelease {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') holdId: string;
  @Column('text') reason: string;
  /** The request that it answers; null: none was needed. */
  @Column('text', { nullable: true }) requestId: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
