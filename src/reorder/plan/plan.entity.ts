import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { ItemKind } from '../item.js';
import type { LineDecision, PlanState } from './vocabulary.js';

/** One computation of what to order. */
@Entity('plan')
export class Plan {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  /** `replay`: what had come of it if plans had been followed; it has no lines and is never shown as a plan. */
  @Column('text') purpose: 'plan' | 'what if' | 'replay';
  /** JSON of what is supposed to be different; null for all but a what-if. */
  @Column('simple-json', { nullable: true }) whatIf: object | null;
  @Column('text') state: PlanState;
  /** The studio's local day it starts from. */
  @Column('text') plannedOn: string;
  @Column('integer') seed: number;
  /** Of all facts and settings that went in: equal ones are not computed twice. */
  @Column('text', { nullable: true }) factsDigest: string | null;
  /** The plan whose lines are shown, since its facts were the same. */
  @Column('text', { nullable: true }) sameAsId: string | null;
  /** JSON of baskets, sums, assumptions and running time. */
  @Column('simple-json', { nullable: true }) summary: object | null;
  @Column('text', { nullable: true }) failure: string | null;
  @Column('text') askedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text', { nullable: true }) endedAt: string | null;
  @Column('integer') version: number;
}

/** What a plan says of one item. */
@Entity('plan_line')
export class PlanLine {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') planId: string;
  /** From 1, by what is at stake. */
  @Column('integer') lineNumber: number;
  @Column('text') itemKind: ItemKind;
  @Column('text') itemKey: string;
  @Column('text') decision: LineDecision;
  @Column('text', { nullable: true }) orderOn: string | null;
  @Column('text', { nullable: true }) offerId: string | null;
  @Column('integer') packs: number;
  @Column('text', { nullable: true }) supplierId: string | null;
  /** Of all that this item was computed from: what is equal is not computed twice. */
  @Column('text') factsDigest: string;
  /** JSON of the whole line: quantities, chances, costs, reasons. */
  @Column('simple-json') content: object;
}
