import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { ContactAudience, ContactChannel, ContactOutcome } from './vocabulary.js';

/** One attempt to tell somebody of a recall; the latest says how it stands with them. */
@Entity('recall_contact')
export class RecallContact {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') recallId: string;
  @Column('text') audience: ContactAudience;
  @Column('text', { nullable: true }) clientId: string | null;
  @Column('text', { nullable: true }) artistId: string | null;
  /** A supplier or an authority. */
  @Column('text', { nullable: true }) company: string | null;
  @Column('text') channel: ContactChannel;
  @Column('text') outcome: ContactOutcome;
  /** Of a client, sealed under their key. */
  @Column('text', { nullable: true }) noteSealed: string | null;
  /** Of anybody else. */
  @Column('text', { nullable: true }) note: string | null;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
