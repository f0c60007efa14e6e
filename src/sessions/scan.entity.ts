import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { ReasonFacts } from './reason-facts.js';
import type { KnownBy, Verdict } from './vocabulary.js';

export interface StoredReason {
  code: string;
  message: string;
  facts: ReasonFacts;
}

/** What an artist showed to the tray and what it was answered; never changed. */
@Entity('scan')
export class Scan {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') sessionId: string;
  /** The text of the symbol as read; null when the lot was picked from a list. */
  @Column('text', { nullable: true }) symbol: string | null;
  @Column('text') knownBy: KnownBy;
  @Column('text') verdict: Verdict;
  @Column('simple-json') reasons: StoredReason[];
  @Column('text', { nullable: true }) productId: string | null;
  @Column('text', { nullable: true }) lotId: string | null;
  @Column('text', { nullable: true }) containerId: string | null;
  @Column('text', { nullable: true }) serial: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
