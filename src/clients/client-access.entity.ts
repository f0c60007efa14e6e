import { Column, Entity, PrimaryColumn } from 'typeorm';

/** By what way somebody was shown something of a client. */
export const accessKinds = [
  'client',
  'client list',
  'client search',
  'session list',
  'session',
  'session record',
  'client trace',
  'session trace',
  'touch-up',
  'legal claims',
  'export',
  'recall',
] as const;
export type AccessKind = (typeof accessKinds)[number];

/** That a person was shown something of a client. Never changed. */
@Entity('client_access')
export class ClientAccess {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') clientId: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') what: AccessKind;
  @Column('text') accessedAt: string;
}
