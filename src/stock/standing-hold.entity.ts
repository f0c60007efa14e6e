import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { LotScope } from './lot-matching/lot-scope.js';

/** Holds lots that are yet to arrive, as soon as they do. Never changed; its end is a row of its own. */
@Entity('standing_hold')
export class StandingHold {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('simple-json') scope: LotScope;
  @Column('text', { nullable: true }) note: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}

/** From here on nothing more is caught; holds that were placed stand on. */
@Entity('standing_hold_end')
export class StandingHoldEnd {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') standingHoldId: string;
  @Column('text') reason: string;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}

/** A lot that arrived, and the hold that was placed on it. */
@Entity('standing_hold_catch')
export class StandingHoldCatch {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') standingHoldId: string;
  @PrimaryColumn('text') holdId: string;
  @Column('text') lotId: string;
  @Column('text') grade: 'certain' | 'possible';
  @Column('simple-json') reasons: object[];
  @Column('text') recordedAt: string;
}
