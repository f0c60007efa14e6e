import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { invalidField, notFound, Problem } from '../../platform/problem.js';
import type { Permission } from '../permissions.js';
import { ApiToken } from './api-token.entity.js';
import type { MakeApiTokenDto } from './api-tokens.dto.js';
import type { ApiTokenView, MadeApiTokenView } from './api-tokens.views.js';
import { CredentialUses } from './credential-uses.service.js';
import { Secrets } from './secrets.service.js';

/** By this a token is known where it should not be: in a script, a log, a message. */
const prefix = 'lotward_';
const dayMilliseconds = 86_400_000;
const mostListed = 200;

/** A program that acts as a person. */
export interface TokenHolder {
  tokenId: string;
  studioId: string;
  personId: string;
  scopes: readonly Permission[];
}

/** Tokens for programs. A token can do what its person may, and of that only its scopes. */
@Injectable()
export class ApiTokens {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly secrets: Secrets,
    private readonly uses: CredentialUses,
  ) {}

  /** Who presents this token; undefined when it is unknown, expired or revoked. */
  async find(token: string): Promise<TokenHolder | undefined> {
    if (!token.startsWith(prefix)) return undefined;
    const now = this.clock.now();
    const [row] = await this.database.read<{
      id: string;
      studio_id: string;
      person_id: string;
      scopes: string;
      last_used_at: string | null;
    }>(
      `SELECT api_token.id, studio_id, person_id, scopes, last_used_at FROM api_token
       LEFT JOIN credential_use ON credential_use.id = api_token.id
       WHERE secret_hash = $1 AND revoked_at IS NULL AND expires_at > $2`,
      [this.secrets.hash(token.slice(prefix.length)), now],
    );
    if (!row) return undefined;
    await this.uses.note(row.id, row.last_used_at);
    return {
      tokenId: row.id,
      studioId: row.studio_id,
      personId: row.person_id,
      scopes: JSON.parse(row.scopes) as Permission[],
    };
  }

  /** Whether a token still counts. It is only looked at: this is no use of it. */
  async isOpen(tokenId: string): Promise<boolean> {
    const rows = await this.database.read(
      'SELECT id FROM api_token WHERE id = $1 AND revoked_at IS NULL AND expires_at > $2',
      [tokenId, this.clock.now()],
    );
    return rows.length > 0;
  }

  /** The tokens of a studio; those that ended stay listed. */
  async list(actor: Actor): Promise<ApiTokenView[]> {
    const rows = await this.database.read<Omit<ApiTokenView, 'scopes'> & { scopes: string }>(
      `SELECT api_token.id, person_id AS "personId", name, scopes, created_at AS "createdAt",
         expires_at AS "expiresAt", revoked_at AS "revokedAt", last_used_at AS "lastUsedAt"
       FROM api_token LEFT JOIN credential_use ON credential_use.id = api_token.id
       WHERE studio_id = $1 ORDER BY created_at DESC, api_token.id LIMIT ${mostListed}`,
      [actor.studioId],
    );
    return rows.map((row) => ({ ...row, scopes: JSON.parse(row.scopes) as Permission[] }));
  }

  /**
   * Makes a token for the acting person, or from the shell for another.
   * @param may what the person may; a token is given nothing more
   */
  async make(
    actor: Actor & { personId: string },
    may: ReadonlySet<Permission>,
    dto: MakeApiTokenDto,
  ): Promise<MadeApiTokenView> {
    const beyond = dto.scopes.filter((scope) => !may.has(scope));
    if (beyond.length > 0) {
      throw invalidField('scopes', `Your role has no permission to ${beyond.join(', ')}; leave that out`);
    }
    const secret = await this.secrets.of('API token', `${actor.studioId} ${dto.id}`);
    const made = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'identity.make-token',
        subject: { kind: 'api token', id: dto.id },
        // Whom it acts as belongs to it: what somebody else asked for is not repeated to them, token and all.
        content: { ...dto, personId: actor.personId },
      },
      async (transaction) => {
        const token: ApiToken = {
          studioId: actor.studioId,
          id: dto.id,
          personId: actor.personId,
          name: dto.name,
          scopes: [...new Set(dto.scopes)].sort(),
          secretHash: this.secrets.hash(secret),
          createdAt: transaction.recordedAt,
          expiresAt: new Date(Date.parse(transaction.recordedAt) + dto.days * dayMilliseconds).toISOString(),
          revokedAt: null,
        };
        await transaction.insert(ApiToken, token);
        transaction.note({ scopes: token.scopes, expiresAt: token.expiresAt });
        return { id: token.id, expiresAt: token.expiresAt };
      },
    );
    return { ...made, token: prefix + secret };
  }

  /** @throws Problem not-found; wrong-state when it was revoked already */
  async revoke(actor: Actor, tokenId: string, requestId: string): Promise<{ id: string; revokedAt: string }> {
    return this.transactions.write(
      actor,
      {
        id: requestId,
        action: 'identity.revoke-token',
        subject: { kind: 'api token', id: tokenId },
        content: { tokenId },
      },
      async (transaction) => {
        const key = { studioId: actor.studioId, id: tokenId };
        const revoked = await transaction.update(
          ApiToken,
          { ...key, revokedAt: null },
          { revokedAt: transaction.recordedAt },
        );
        if (revoked) return { id: tokenId, revokedAt: transaction.recordedAt };
        const known = await transaction.manager.findOneBy(ApiToken, key);
        if (!known) throw notFound('token', tokenId);
        throw new Problem(409, 'wrong-state', 'This token was revoked already; nothing more is to be done.');
      },
    );
  }
}
