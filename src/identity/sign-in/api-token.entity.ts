import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Permission } from '../permissions.js';

/** Lets a program act as a person, within scopes and until a day. */
@Entity('api_token')
export class ApiToken {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') personId: string;
  @Column('text') name: string;
  @Column('simple-json') scopes: Permission[];
  @Column('text') secretHash: string;
  @Column('text') createdAt: string;
  @Column('text') expiresAt: string;
  @Column('text', { nullable: true }) revokedAt: string | null;
}
