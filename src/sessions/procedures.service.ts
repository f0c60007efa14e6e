import { Injectable } from '@nestjs/common';
import { IsNull } from 'typeorm';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { Procedure } from './procedure.entity.js';
import type { AddProcedureDto, ChangeProcedureDto, ListProceduresDto } from './procedures.dto.js';
import type { ProcedureView } from './procedures.views.js';
import { ProspectJudge } from './prospects/prospect-judge.service.js';
import { DEFAULT_TOUCH_UP_DAYS } from './touch-up-window.js';

const maximumProcedures = 500;

/** What the studio offers, and after how many days each is touched up. */
@Injectable()
export class Procedures {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly prospects: ProspectJudge,
  ) {}

  async list(actor: Actor, dto: ListProceduresDto): Promise<ProcedureView[]> {
    const procedures = await this.database.reader.manager.find(Procedure, {
      where: { studioId: actor.studioId, ...(dto.archived !== 'shown' && { archivedAt: IsNull() }) },
      order: { createdAt: 'ASC', id: 'ASC' },
      take: maximumProcedures,
    });
    return procedures.map(viewOf);
  }

  async add(actor: Actor, dto: AddProcedureDto): Promise<ProcedureView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.add-procedure',
        subject: { kind: 'procedure', id: dto.id },
        content: dto,
      },
      async (transaction) => {
        const procedure: Procedure = {
          studioId: actor.studioId,
          id: dto.id,
          name: dto.name,
          bodyPlace: dto.bodyPlace,
          touchUpFromDays: dto.touchUpFromDays ?? DEFAULT_TOUCH_UP_DAYS.fromDays,
          touchUpToDays: dto.touchUpToDays ?? DEFAULT_TOUCH_UP_DAYS.toDays,
          version: 1,
          createdAt: transaction.recordedAt,
          archivedAt: null,
        };
        refuseBackwards(procedure);
        await this.refuseTakenName(transaction, procedure);
        await transaction.insert(Procedure, procedure);
        return viewOf(procedure);
      },
    );
  }

  async change(actor: Actor, procedureId: string, dto: ChangeProcedureDto): Promise<ProcedureView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.change-procedure',
        subject: { kind: 'procedure', id: procedureId },
        content: { procedureId, ...dto },
      },
      async (transaction) => {
        const { id: _, version, archived, ...fields } = dto;
        const present = await this.find(transaction, procedureId);
        const changes: Partial<Procedure> = { ...fields };
        if (archived !== undefined) {
          changes.archivedAt = archived ? (present.archivedAt ?? transaction.recordedAt) : null;
        }
        const wanted = { ...present, ...changes };
        refuseBackwards(wanted);
        if (wanted.archivedAt === null) await this.refuseTakenName(transaction, wanted);
        const procedure = await transaction.change(
          Procedure,
          'procedure',
          { studioId: actor.studioId, id: procedureId },
          version,
          changes,
        );
        transaction.note({ fields: Object.keys(dto).filter((field) => !['id', 'version'].includes(field)) });
        await this.prospects.mark(transaction);
        return viewOf(procedure);
      },
    );
  }

  /**
   * The procedure, in the caller's transaction.
   * @throws Problem not-found
   */
  async find(transaction: Transaction, procedureId: string): Promise<Procedure> {
    const procedure = await transaction.manager.findOneBy(Procedure, {
      studioId: transaction.studioId,
      id: procedureId,
    });
    if (!procedure) throw notFound('procedure', procedureId);
    return procedure;
  }

  /**
   * The procedure, provided it is still offered.
   * @throws Problem not-found, wrong-state
   */
  async offered(transaction: Transaction, procedureId: string): Promise<Procedure> {
    const procedure = await this.find(transaction, procedureId);
    if (procedure.archivedAt === null) return procedure;
    throw new Problem(
      409,
      'wrong-state',
      `"${procedure.name}" is no longer offered. Choose another procedure, or offer it again first.`,
    );
  }

  private async refuseTakenName(
    transaction: Transaction,
    wanted: { id: string; name: string },
  ): Promise<void> {
    const [taken] = await transaction.query<{ id: string }>(
      `SELECT id FROM procedure
       WHERE studio_id = $1 AND lower(name) = lower($2) AND id <> $3 AND archived_at IS NULL LIMIT 1`,
      [transaction.studioId, wanted.name, wanted.id],
    );
    if (!taken) return;
    throw new Problem(
      409,
      'already-exists',
      `A procedure named "${wanted.name}" is offered already. Change that one, or choose another name.`,
      { procedureId: taken.id },
    );
  }
}

function refuseBackwards({ touchUpFromDays, touchUpToDays }: Procedure): void {
  if (touchUpFromDays <= touchUpToDays) return;
  throw invalidField(
    'touchUpToDays',
    `A touch-up from ${touchUpFromDays} to ${touchUpToDays} days was given. The first day may not lie after the last; correct one of them.`,
  );
}

function viewOf(procedure: Procedure): ProcedureView {
  const { studioId: _, createdAt: __, ...view } = procedure;
  return view;
}
