import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { ClosingOutcome, ClosingOverride } from './vocabulary.js';

/** The end of a recall, with all that was known then. A recall that is widened afterwards is open again. */
@Entity('recall_closing')
export class RecallClosing {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') recallId: string;
  @Column('text') outcome: ClosingOutcome;
  @Column('text', { nullable: true }) reason: string | null;
  @Column('simple-json') overrides: ClosingOverride[];
  /** What the report is made of: ids and references of clients, never names. */
  @Column('simple-json') facts: object;
  /** Null where a studio follows a withdrawal of another one. */
  @Column('text', { nullable: true }) signedBy: string | null;
  @Column('text', { nullable: true }) secondSignedBy: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
