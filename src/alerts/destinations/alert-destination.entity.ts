import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { AlertSeverity } from '../open-condition.js';

/** Where alerts go: a person's mail address or browser, or a webhook of the studio. */
@Entity('alert_destination')
export class AlertDestination {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') kind: 'mail' | 'webhook' | 'push';
  /** Null for a webhook only. */
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') dataKeyId: string;
  /** JSON of the address and the secrets; null once it was removed. */
  @Column('text', { nullable: true }) settingsSealed: string | null;
  /** For a webhook: milder alerts do not go there. A person's preferences say it for the others. */
  @Column('text') minimumSeverity: AlertSeverity;
  /** Paused by somebody, stopped because its receiver said that it is gone. */
  @Column('text') state: 'active' | 'paused' | 'stopped' | 'removed';
  @Column('text', { nullable: true }) stateReason: string | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
}
