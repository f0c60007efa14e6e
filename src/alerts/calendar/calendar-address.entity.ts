import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A secret address at which a person's calendar program reads what ends when. */
@Entity('calendar_address')
export class CalendarAddress {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') personId: string;
  @Column('text') tokenHash: string;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) removedAt: string | null;
}
