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
  /** Until then nobody is reminded of it; null: it was not put off. */
  @Column('text', { nullable: true }) putOffUntil: string | null;
  /** The person who sees to it. */
  @Column('text', { nullable: true }) givenTo: string | null;
  /** Who closed it while its condition stood; null: it closed by itself. */
  @Column('text', { nullable: true }) closedBy: string | null;
  /** When the condition of one that somebody closed was found ended; until then it does not open anew. */
  @Column('text', { nullable: true }) endedAt: string | null;
  /**
   * How many turns it had so far, 0 while nothing leads to anybody, and since when the present one lasts; null: it is not
   * urgent. The instant alone is null once the order came to its end.
   */
  @Column('integer', { nullable: true }) turn: number | null;
  @Column('text', { nullable: true }) turnAt: string | null;
}
