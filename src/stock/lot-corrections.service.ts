import { Injectable } from '@nestjs/common';
import { IsNull, Not } from 'typeorm';
import { localDay } from '../identity/local-day.js';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { faultsProblem, invalidField, notFound, Problem, staleVersion } from '../platform/problem.js';
import { BlendDates } from './blend-dates.service.js';
import { Lot } from './lot.entity.js';
import { LotCode, newLotCode } from './lot-code.entity.js';
import { type CorrectLotDto, correctionDecisions } from './lot-corrections.dto.js';
import type { CorrectedLotView } from './lot-corrections.views.js';
import { matchLot } from './lot-match.js';
import { type PrintedCode, type PrintedFacts, printedFacts } from './printed-facts.js';
import { ReceiptHolds, viewOfCaught } from './receipt-holds.service.js';
import { lotReasonsAtReceipt } from './receipt-reasons.js';
import { StandingHolds } from './standing-holds/standing-holds.service.js';
import { StockConditions } from './stock-conditions.service.js';
import { OtherEnds } from './transfers/other-ends.service.js';
import { SentGoods } from './transfers/sent-goods.service.js';

/** Puts right what was recorded of a lot. What stood there before stays findable, and the audit log names both. */
@Injectable()
export class LotCorrections {
  constructor(
    private readonly transactions: Transactions,
    private readonly holds: ReceiptHolds,
    private readonly standingHolds: StandingHolds,
    private readonly blendDates: BlendDates,
    private readonly conditions: StockConditions,
    private readonly sentGoods: SentGoods,
    private readonly otherEnds: OtherEnds,
  ) {}

  async correct(actor: Actor, lotId: string, dto: CorrectLotDto): Promise<CorrectedLotView> {
    const told: string[] = [];
    const view = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.correct-lot',
        subject: { kind: 'lot', id: lotId },
        content: { lotId, ...dto },
      },
      async (transaction) => {
        const { lot, codes } = await this.load(transaction, lotId);
        if (lot.version !== dto.version) throw staleVersion('lot', lot.version);
        const day = localDay(transaction.recordedAt, actor.timeZone);
        const facts = correctedFacts(lot, codes, dto, day);
        if (facts.code !== lot.code || facts.useBy !== lot.useBy) {
          await this.refuseCollision(transaction, lot, facts, dto.sameCodeDecision);
        }

        const { code, codeState, useBy, useByPrecision, manufacturedOn } = facts;
        const changes = { code, codeState, useBy, useByPrecision, manufacturedOn };
        const corrected = await transaction.change(
          Lot,
          'lot',
          { studioId: actor.studioId, id: lotId },
          dto.version,
          changes,
        );
        await this.replaceCodes(transaction, lot, codes, facts.codes);
        const before = lotReasonsAtReceipt(lot, day);
        const reasons = lotReasonsAtReceipt(corrected, day).filter((reason) => !before.includes(reason));
        const holds = await this.holds.placeOnLot(transaction, lotId, reasons, transaction.recordedAt);
        const caught = await this.standingHolds.catchLots(transaction, [lotId], transaction.recordedAt);
        holds.push(...caught.map(viewOfCaught));
        transaction.note({
          reason: dto.reason,
          changes: differences(lot, codes, facts),
          ...(dto.sameCodeDecision === undefined ? {} : { sameCodeDecision: dto.sameCodeDecision }),
        });
        const blendProductIds = await this.blendDates.follow(transaction, {
          lotIds: useBy === lot.useBy ? [] : [lotId],
        });
        told.push(...(await this.sentGoods.follow(transaction, [lotId])));
        await this.conditions.reevaluate(transaction, [lot.productId, ...blendProductIds]);
        const superseded = await transaction.query<PrintedCode>(
          `SELECT kind, code FROM lot_code WHERE studio_id = $1 AND lot_id = $2
             AND superseded_at IS NOT NULL ORDER BY superseded_at, id`,
          [actor.studioId, lotId],
        );
        const { id, productId, version } = corrected;
        return {
          ...{ id, productId, ...changes, version, codes: facts.codes, holds },
          supersededCodes: superseded.map((row) => ({ kind: row.kind, code: row.code })),
        };
      },
    );
    await this.otherEnds.judge(told);
    return view;
  }

  /** The lot under lock; its product first, as receiving locks it, so that no goods join it meanwhile. */
  private async load(transaction: Transaction, lotId: string): Promise<{ lot: Lot; codes: LotCode[] }> {
    const { studioId, manager } = transaction;
    const found = await manager.findOneBy(Lot, { studioId, id: lotId });
    if (!found) throw notFound('lot', lotId);
    await transaction.lock('product', [found.productId]);
    await transaction.lock('lot', [lotId]);
    const lot = await manager.findOneByOrFail(Lot, { studioId, id: lotId });
    const codes = await manager.find(LotCode, {
      where: { studioId, lotId, supersededAt: IsNull() },
      order: { recordedAt: 'ASC', id: 'ASC' },
    });
    return { lot, codes };
  }

  /**
   * The same code with another use-by date is the same question as at receipt, but for a lot that takes on the code of
   * another only one answer is left: two lots cannot become one.
   */
  private async refuseCollision(
    transaction: Transaction,
    lot: Lot,
    { code, useBy, useByPrecision }: PrintedFacts,
    decision: CorrectLotDto['sameCodeDecision'],
  ): Promise<void> {
    if (code === null) return;
    const { studioId, productId } = lot;
    const sameCode = await transaction.manager.find(Lot, {
      where: { studioId, productId, code, id: Not(lot.id) },
      order: { createdAt: 'ASC', id: 'ASC' },
    });
    const recorded = sameCode.map((other) => ({ lotId: other.id, code, useBy: other.useBy }));
    const match = matchLot({ code, useBy }, recorded, decision);
    const given = useBy ?? 'none printed';
    if (match.kind === 'joins') {
      throw new Problem(
        409,
        'already-exists',
        `The lot ${code} with the use-by date ${given} is on record already for this product. Two lots cannot become one; compare both with their packages.`,
        { existing: { kind: 'lot', id: match.lotId } },
      );
    }
    // That this lot shares its code was decided when it came to do so.
    if (match.kind !== 'question' || code === lot.code) return;
    const dates = recorded.map((other) => other.useBy ?? 'none printed').join(', ');
    throw new Problem(
      409,
      'same-code-other-use-by',
      `The code ${code} is on record for this product with the use-by date ${dates}, this lot bears ${given}. Nothing was corrected. Compare both with their packages; then correct the code or the date, or send this with the sameCodeDecision "separate lot".`,
      {
        given: { useBy, useByPrecision },
        recorded: recorded.map(({ lotId, useBy: date }) => ({ lotId, useBy: date })),
        choices: correctionDecisions,
      },
    );
  }

  private async replaceCodes(
    transaction: Transaction,
    { studioId, id: lotId }: Lot,
    recorded: readonly LotCode[],
    printed: readonly PrintedCode[],
  ): Promise<void> {
    for (const row of recorded) {
      if (printed.some((code) => isSame(code, row))) continue;
      await transaction.update(LotCode, { studioId, id: row.id }, { supersededAt: transaction.recordedAt });
    }
    const added = printed
      .filter((code) => !recorded.some((row) => isSame(code, row)))
      .map((code) => newLotCode(transaction, lotId, code));
    if (added.length > 0) await transaction.insert(LotCode, added);
  }
}

/** What is printed by the correction; what it does not name stays as it is recorded. */
function correctedFacts(lot: Lot, codes: readonly LotCode[], dto: CorrectLotDto, day: string): PrintedFacts {
  if (
    dto.codes === undefined &&
    dto.codeState === undefined &&
    dto.useBy === undefined &&
    dto.manufacturedOn === undefined
  ) {
    throw invalidField('codes', 'Nothing is corrected. Give codes, codeState, useBy or manufacturedOn.');
  }
  const codesStay = dto.codes === undefined && dto.codeState === undefined;
  const said = codesStay
    ? { codes: codes.map(({ kind, code }) => ({ kind, code })), codeState: lot.codeState }
    : { codes: dto.codes, codeState: dto.codeState };
  const decided = printedFacts(
    {
      ...said,
      useBy: dto.useBy === undefined ? lot.useBy : dto.useBy,
      manufacturedOn: dto.manufacturedOn === undefined ? lot.manufacturedOn : dto.manufacturedOn,
    },
    {},
    day,
  );
  if ('faults' in decided) throw faultsProblem(decided.faults);
  const { facts } = decided;
  return {
    ...facts,
    code: codesStay ? lot.code : facts.code,
    // A date that is not corrected keeps how exactly the label states it.
    useByPrecision: dto.useBy === undefined ? lot.useByPrecision : facts.useByPrecision,
  };
}

function differences(lot: Lot, codes: readonly LotCode[], facts: PrintedFacts): object[] {
  const written = (list: readonly PrintedCode[]) => list.map(({ kind, code }) => `${kind} ${code}`);
  const all = [
    { field: 'codes', from: written(codes), to: written(facts.codes) },
    { field: 'codeState', from: lot.codeState, to: facts.codeState },
    { field: 'useBy', from: lot.useBy, to: facts.useBy },
    { field: 'useByPrecision', from: lot.useByPrecision, to: facts.useByPrecision },
    { field: 'manufacturedOn', from: lot.manufacturedOn, to: facts.manufacturedOn },
  ];
  return all.filter(({ from, to }) => JSON.stringify(from) !== JSON.stringify(to));
}

function isSame(one: PrintedCode, other: PrintedCode): boolean {
  return one.kind === other.kind && one.code === other.code;
}
