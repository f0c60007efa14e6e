import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { LotScope } from '../stock/lot-matching/lot-scope.js';

/** What a recall is about, as it was said at one time. Widening or correcting it adds the next number. */
@Entity('recall_scope')
export class RecallScope {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') recallId: string;
  /** From 1; the greatest counts. */
  @Column('integer') number: number;
  @Column('text', { nullable: true }) noticeId: string | null;
  @Column('simple-json') scope: LotScope;
  /** Who recalls. */
  @Column('text', { nullable: true }) issuer: string | null;
  @Column('text', { nullable: true }) reference: string | null;
  @Column('text', { nullable: true }) issuedOn: string | null;
  @Column('text', { nullable: true }) classification: string | null;
  /** The risk in the words of the notice. */
  @Column('text', { nullable: true }) risk: string | null;
  /** What the notice offers or asks to be done. */
  @Column('text', { nullable: true }) remedy: string | null;
  /** Why it was amended; null for the first. */
  @Column('text', { nullable: true }) reason: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
