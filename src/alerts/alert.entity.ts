import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A condition that stands open or stood open: one open row per kind and subject. */
@Entity('alert')
export class Alert {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') kind: string;
  @Column('text') subjectKind: string;
  @Column('text') subjectId: string;
  @Column('text') severity: 'notice' | 'warning' | 'urgent';
  /** What a reader needs: names of products, lot codes, dates, quantities; never a client. */
  @Column('simple-json') facts: Record<string, unknown>;
  @Column('text') openedAt: string;
  @Column('text', { nullable: true }) acknowledgedAt: string | null;
  @Column('text', { nullable: true }) acknowledgedBy: string | null;
  @Column('text', { nullable: true }) closedAt: string | null;
}
