import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { Problem } from '../platform/problem.js';
import type { AddCompanyDto, RenameCompanyDto } from './companies.dto.js';
import type { CompanyView } from './companies.views.js';
import { Maker } from './maker.entity.js';
import { Supplier } from './supplier.entity.js';

const maximumCompanies = 2_000;
const entities = { maker: Maker, supplier: Supplier };

export type CompanyKind = keyof typeof entities;

/** Makers, whose name is on the label, and suppliers, who sold the goods: two registers of the chain. */
@Injectable()
export class Companies {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
  ) {}

  async list(actor: Actor, kind: CompanyKind): Promise<CompanyView[]> {
    return this.database.read<CompanyView>(
      `SELECT id, name, version FROM ${kind} WHERE chain_id = $1 ORDER BY lower(name), id LIMIT $2`,
      [actor.chainId, maximumCompanies],
    );
  }

  async add(actor: Actor, kind: CompanyKind, dto: AddCompanyDto): Promise<CompanyView> {
    return this.transactions.write(
      actor,
      { id: dto.id, action: `catalogue.add-${kind}`, subject: { kind, id: dto.id }, content: dto },
      async (transaction) => {
        await this.refuseSameName(transaction, kind, dto.name, dto.id);
        await transaction.insert<Maker | Supplier>(entities[kind], {
          chainId: actor.chainId,
          id: dto.id,
          name: dto.name,
          version: 1,
          createdAt: transaction.recordedAt,
        });
        return { id: dto.id, name: dto.name, version: 1 };
      },
    );
  }

  async rename(
    actor: Actor,
    kind: CompanyKind,
    companyId: string,
    dto: RenameCompanyDto,
  ): Promise<CompanyView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: `catalogue.rename-${kind}`,
        subject: { kind, id: companyId },
        content: { companyId, ...dto },
      },
      async (transaction) => {
        await this.refuseSameName(transaction, kind, dto.name, companyId);
        const key = { chainId: actor.chainId, id: companyId };
        const { name, version } = await transaction.change<Maker | Supplier>(
          entities[kind],
          kind,
          key,
          dto.version,
          { name: dto.name },
        );
        transaction.note({ fields: ['name'] });
        return { id: companyId, name, version };
      },
    );
  }

  private async refuseSameName(
    transaction: Transaction,
    kind: CompanyKind,
    name: string,
    companyId: string,
  ): Promise<void> {
    // One change of the register at a time, so that a name that was free still is when it is written.
    await transaction.lockChain();
    const [same] = await transaction.query<{ id: string; name: string }>(
      `SELECT id, name FROM ${kind} WHERE chain_id = $1 AND lower(name) = lower($2) AND id <> $3`,
      [transaction.actor.chainId, name, companyId],
    );
    if (!same) return;
    throw new Problem(
      409,
      'already-exists',
      `There is already a ${kind} named "${same.name}". Use that one, or give another name.`,
      { existing: { kind, id: same.id } },
    );
  }
}
