import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { notFound, Problem } from '../platform/problem.js';
import { Clients, erased, type KnownClient } from './clients.service.js';
import { LegalClaim, LegalClaimEnd } from './legal-claim.entity.js';
import type { EndLegalClaimDto, NoteLegalClaimDto } from './legal-claims.dto.js';
import type { LegalClaimView, WrittenLegalClaimView } from './legal-claims.views.js';
import { sealedAsClaimEndReason, sealedAsClaimReason } from './sealing-contexts.js';
import { ShownClients } from './shown-clients.service.js';

const claimsPerRead = 200;

interface ClaimRow {
  id: string;
  reasonSealed: string;
  recordedAt: string;
  personId: string | null;
  endedAt: string | null;
  endSealed: string | null;
  endedBy: string | null;
}

/** Legal claims for which a client's record is needed: while one stands, the client is not erased. */
@Injectable()
export class LegalClaims {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clients: Clients,
    private readonly shownClients: ShownClients,
  ) {}

  async list(actor: Actor, clientId: string): Promise<LegalClaimView[]> {
    return this.some(await this.shownClients.one(actor, clientId, 'legal claims'));
  }

  /**
   * All of them, the latest first.
   * @param known the client as they may be shown
   */
  async all(known: KnownClient): Promise<LegalClaimView[]> {
    const claims: LegalClaimView[] = [];
    for (let last: LegalClaimView | undefined; ; ) {
      const some = await this.some(known, last);
      claims.push(...some);
      last = some.at(-1);
      if (some.length < claimsPerRead) return claims;
    }
  }

  /** The latest, or those that come after one. */
  private async some({ client, sealer }: KnownClient, after?: LegalClaimView): Promise<LegalClaimView[]> {
    const rows = await this.database.read<ClaimRow>(
      `SELECT claim.id, claim.reason_sealed AS "reasonSealed", claim.recorded_at AS "recordedAt",
         claim.person_id AS "personId", ended.recorded_at AS "endedAt", ended.reason_sealed AS "endSealed",
         ended.person_id AS "endedBy"
       FROM legal_claim AS claim LEFT JOIN legal_claim_end AS ended
         ON ended.studio_id = claim.studio_id AND ended.claim_id = claim.id
       WHERE claim.studio_id = $1 AND claim.client_id = $2${after ? ' AND (claim.recorded_at, claim.id) < ($3, $4)' : ''}
       ORDER BY claim.recorded_at DESC, claim.id DESC LIMIT ${claimsPerRead}`,
      [client.studioId, client.id, ...(after ? [after.recordedAt, after.id] : [])],
    );
    return rows.map(({ reasonSealed, endSealed, ...row }) => ({
      id: row.id,
      reason: sealer?.open(reasonSealed, sealedAsClaimReason(row.id)) ?? null,
      recordedAt: row.recordedAt,
      personId: row.personId,
      endedAt: row.endedAt,
      endedBecause: sealer?.open(endSealed, sealedAsClaimEndReason(row.id)) ?? null,
      endedBy: row.endedBy,
    }));
  }

  async note(actor: Actor, clientId: string, dto: NoteLegalClaimDto): Promise<WrittenLegalClaimView> {
    const { studioId, personId, via } = actor;
    const { sealer } = await this.clients.known(studioId, clientId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'clients.note-legal-claim',
        subject: { kind: 'client', id: clientId },
        content: { clientId, ...dto },
      },
      async (transaction) => {
        if (!sealer) throw erased(clientId);
        await this.clients.lock(transaction, clientId);
        await transaction.insert(LegalClaim, {
          studioId,
          id: dto.id,
          clientId,
          reasonSealed: sealer.seal(dto.reason, sealedAsClaimReason(dto.id)) ?? '',
          recordedAt: transaction.recordedAt,
          personId,
          via,
        });
        return { id: dto.id, clientId, endedAt: null };
      },
    );
  }

  async end(
    actor: Actor,
    clientId: string,
    claimId: string,
    dto: EndLegalClaimDto,
  ): Promise<WrittenLegalClaimView> {
    const { studioId, personId, via } = actor;
    const { sealer } = await this.clients.known(studioId, clientId);
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'clients.end-legal-claim',
        subject: { kind: 'client', id: clientId },
        content: { clientId, claimId, ...dto },
      },
      async (transaction) => {
        if (!sealer) throw erased(clientId);
        await this.clients.lock(transaction, clientId);
        const claim = await transaction.manager.findOneBy(LegalClaim, { studioId, id: claimId, clientId });
        if (!claim) throw notFound('legal claim of this client', claimId);
        await this.refuseEnded(transaction, claimId);
        await transaction.insert(LegalClaimEnd, {
          studioId,
          claimId,
          reasonSealed: sealer.seal(dto.reason, sealedAsClaimEndReason(claimId)) ?? '',
          recordedAt: transaction.recordedAt,
          personId,
          via,
        });
        return { id: claimId, clientId, endedAt: transaction.recordedAt };
      },
    );
  }

  private async refuseEnded(transaction: Transaction, claimId: string): Promise<void> {
    const ended = await transaction.manager.findOneBy(LegalClaimEnd, {
      studioId: transaction.studioId,
      claimId,
    });
    if (!ended) return;
    throw new Problem(
      409,
      'wrong-state',
      `The legal claim ${claimId} ended already, on ${ended.recordedAt}. If another one stands, note it as a new claim.`,
    );
  }
}
