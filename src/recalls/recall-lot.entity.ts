import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { LotDecision } from './vocabulary.js';

/** A lot that a scope meets, with how surely and why. */
@Entity('recall_lot')
export class RecallLot {
  @PrimaryColumn('text') studioId: string;
  /** One lot may be met by several scopes and recalls, so its own id names the row in the audit log. */
  @PrimaryColumn('text') id: string;
  @Column('text') recallId: string;
  @Column('integer') scopeNumber: number;
  @Column('text') lotId: string;
  /** Which item of the scope; null: none by itself. */
  @Column('integer', { nullable: true }) itemIndex: number | null;
  @Column('text') grade: 'certain' | 'possible';
  @Column('simple-json') reasons: object[];
  @Column('text') recordedAt: string;
}

/** What a person decided of a lot that was possibly meant; the latest counts. */
@Entity('recall_lot_decision')
export class RecallLotDecision {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') recallId: string;
  @Column('text') lotId: string;
  @Column('text') decision: LotDecision;
  @Column('text') reason: string;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
