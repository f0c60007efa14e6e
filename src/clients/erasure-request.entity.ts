import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Via } from '../platform/actor.js';
import type { ErasureGround, ErasureObstacle, ErasureOverride } from './erasure-decision.js';

/** That erasure was asked for, and what was answered. Never changed, and outlives what it is about: nothing personal. */
@Entity('erasure_request')
export class ErasureRequest {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') clientId: string;
  @Column('text') ground: ErasureGround;
  @Column('text') answer: 'erased' | 'refused';
  @Column('simple-json') obstacles: ErasureObstacle[];
  @Column('simple-json') overrides: ErasureOverride[];
  /** The key that was, or would have been, destroyed. */
  @Column('text') dataKeyId: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: Via;
}
