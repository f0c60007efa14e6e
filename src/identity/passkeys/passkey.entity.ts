import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A passkey: a WebAuthn credential by which an account signs in. The studio is the account's own. */
@Entity('passkey')
export class Passkey {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') accountId: string;
  /** The authenticator's name for it, base64url. */
  @Column('text') credentialId: string;
  /** COSE key, base64url. */
  @Column('text') publicKey: string;
  /** The host name it belongs to; browsers offer it nowhere else. */
  @Column('text') relyingParty: string;
  /** How the browser may reach the authenticator, for `excludeCredentials`. */
  @Column('simple-json') transports: string[];
  @Column('text') nameSealed: string;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  /** When its counter went back: somebody holds a copy. It works no more. */
  @Column('text', { nullable: true }) suspectedAt: string | null;
  @Column('text', { nullable: true }) removedAt: string | null;
}
