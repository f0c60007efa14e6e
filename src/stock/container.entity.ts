import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { ContainerForm, ContainerState, PresentState } from './vocabulary.js';

/** A bottle or tube of a lot, or a box of its counted pieces: what stands somewhere and carries Lotward's label. */
@Entity('container')
export class Container {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') lotId: string;
  @Column('text') form: ContainerForm;
  /** Lotward's own code on the label, 12 characters. */
  @Column('text') labelCode: string;
  @Column('text') placeId: string;
  /** The artist whose it is; null: the studio's. */
  @Column('text', { nullable: true }) ownerId: string | null;
  @Column('text') state: ContainerState;
  /** Instant of opening; travels with the container. */
  @Column('text', { nullable: true }) openedAt: string | null;
  @Column('text', { nullable: true }) openedBy: string | null;
  /** The opening that was recorded for itself, while an earlier use has moved `openedAt` back; null: there is none. */
  @Column('text', { nullable: true }) openingToldAt: string | null;
  /**
   * The end of its opened life as the studio judged it that sent it here opened, a day or an instant; null for all else.
   * It lasts no longer here.
   */
  @Column('text', { nullable: true }) usableThrough: string | null;
  @Column('text') receivedAt: string;
  /** When it was finished or discarded. */
  @Column('text', { nullable: true }) endedAt: string | null;
  /** The state it ended from, and comes back to when that was a mistake; null while it is here. */
  @Column('text', { nullable: true }) endedFrom: PresentState | null;
  @Column('integer') version: number;
}
