import { Injectable } from '@nestjs/common';
import type { Read } from '../platform/database/database.js';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { faultsProblem, invalidField } from '../platform/problem.js';
import type { LotScope } from '../stock/lot-matching/lot-scope.js';
import type { HeldPossible, SaidScope } from './recall-scoping.service.js';
import type { StatedRecallDto } from './recalls.dto.js';
import type { LotScopeDto } from './scope/scope.dto.js';
import { scopeOf } from './scope/scope-of-request.js';

/** Turns what a request says of a scope into one that can be carried out. */
@Injectable()
export class StatedScopes {
  /** @throws Problem invalid-fields naming everything that is missing, contradictory or not in the register */
  async scope(read: Read, chainId: string, dto: LotScopeDto): Promise<LotScope> {
    const { scope, faults } = scopeOf(dto);
    const named = [...new Set(scope.items.flatMap(({ productIds }) => productIds))];
    if (named.length > 0) {
      const rows = await read<{ id: string }>(
        `SELECT id FROM product WHERE chain_id = $1 AND id IN (${placeholders(named)})`,
        [chainId, ...named],
      );
      const known = new Set(rows.map(({ id }) => id));
      for (const [index, { productIds }] of scope.items.entries()) {
        const unknown = productIds.filter((id) => !known.has(id));
        if (unknown.length === 0) continue;
        faults.push({
          field: `items.${index}.productIds`,
          message: `The register has no product with the id ${unknown.join(', ')}.`,
        });
      }
    }
    if (faults.length > 0) {
      throw faultsProblem(faults.map(({ field, message }) => ({ field: `scope.${field}`, message })));
    }
    return scope;
  }

  async said(
    transaction: Transaction,
    dto: StatedRecallDto,
    { noticeId, reason, at }: { noticeId: string | null; reason: string | null; at: string },
  ): Promise<SaidScope> {
    return {
      noticeId,
      scope: await this.scope(transaction.read, transaction.actor.chainId, dto.scope),
      issuer: dto.issuer ?? null,
      reference: dto.reference ?? null,
      issuedOn: dto.issuedOn ?? null,
      classification: dto.classification ?? null,
      risk: dto.risk ?? null,
      remedy: dto.remedy ?? null,
      reason,
      occurredAt: at,
    };
  }
}

/** @throws Problem invalid-fields when lots are named and not chosen, or chosen and not named */
export function heldPossibleOf({ holdPossible = 'all', heldLotIds }: StatedRecallDto): HeldPossible {
  if ((holdPossible === 'chosen') !== (heldLotIds !== undefined)) {
    throw invalidField('heldLotIds', 'Name lots when holdPossible is "chosen", and only then.');
  }
  return holdPossible === 'chosen' ? (heldLotIds ?? []) : holdPossible;
}
