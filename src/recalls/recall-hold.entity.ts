import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A hold that a recall placed. */
@Entity('recall_hold')
export class RecallHold {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') recallId: string;
  @PrimaryColumn('text') holdId: string;
  @Column('text') lotId: string;
  @Column('text') recordedAt: string;
}

/** A standing hold that a recall placed. */
@Entity('recall_standing_hold')
export class RecallStandingHold {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') recallId: string;
  @PrimaryColumn('text') standingHoldId: string;
  @Column('text') recordedAt: string;
}
