import { Injectable } from '@nestjs/common';
import { In, IsNull } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import type { Transaction } from '../platform/database/transaction.js';
import { Problem } from '../platform/problem.js';
import { Lot } from './lot.entity.js';
import { LotCode, newLotCode } from './lot-code.entity.js';
import { type LotMatch, matchLot, type SameCodeDecision } from './lot-match.js';
import type { PrintedCode, PrintedFacts } from './printed-facts.js';
import type { LotOrigin } from './vocabulary.js';

/** Goods that arrive, as far as it decides their lot. */
export interface ArrivingLine {
  lineNumber: number;
  product: { id: string };
  printed: PrintedFacts;
  dto: { sameCodeDecision?: SameCodeDecision };
  warnings: string[];
}

/** The lot of a received line as it stands once the delivery is recorded. */
export interface LotAtReceipt {
  lot: Lot;
  codes: PrintedCode[];
  /** Whether this delivery brought its first goods. */
  isNew: boolean;
  /** The version on record; 0 for a lot that is new. */
  recordedVersion: number;
  addedCodes: PrintedCode[];
  /** What a person's decision or this delivery changed on a lot on record. */
  corrections: { field: 'useBy' | 'manufacturedOn'; from: string | null; to: string | null }[];
  /** Lines whose printed date was put aside for the one on record. */
  keptDates: { lineNumber: number; printedUseBy: string | null; recordedUseBy: string | null }[];
}

type Question = Extract<LotMatch, { kind: 'question' }> & { line: ArrivingLine };

/** Finds or makes the lots of received lines. */
@Injectable()
export class LotsAtReceipt {
  /**
   * Decides the lot of every line, in their order, so that a line can join a lot that an earlier one makes.
   * The products must be locked. Nothing is written.
   * @throws Problem same-code-other-use-by naming every line that needs a decision
   */
  async decide(
    transaction: Transaction,
    lines: readonly ArrivingLine[],
    origin: LotOrigin,
  ): Promise<LotAtReceipt[]> {
    const known = await this.lotsWithCodes(transaction, lines);
    const questions: Question[] = [];
    const decided = lines.map((line): LotAtReceipt => {
      const { printed, product, dto, warnings } = line;
      const ofProduct = known.filter(({ lot }) => lot.productId === product.id);
      const match = matchLot(
        printed,
        ofProduct.map(({ lot }) => ({ lotId: lot.id, code: lot.code, useBy: lot.useBy })),
        dto.sameCodeDecision,
      );
      if (match.kind === 'question') questions.push({ ...match, line });
      const joined =
        match.kind === 'joins' || match.kind === 'corrects'
          ? ofProduct.find(({ lot }) => lot.id === match.lotId)
          : undefined;
      if (!joined) {
        const made = newLot(transaction, line, origin);
        known.push(made);
        return made;
      }
      if (match.kind === 'corrects') correctUseBy(joined, line);
      else if (joined.lot.useBy !== printed.useBy) keepUseBy(joined, line);
      joinLot(joined, line, warnings);
      return joined;
    });
    if (questions.length > 0) throw sameCodeProblem(questions);
    return decided;
  }

  /** Writes what was decided: lots, their codes, and corrections. */
  async write(transaction: Transaction, lots: readonly LotAtReceipt[]): Promise<void> {
    const each = [...new Set(lots)];
    const made = each.filter((lot) => lot.isNew).map(({ lot }) => lot);
    if (made.length > 0) await transaction.insert(Lot, made);
    const corrections: object[] = [];
    for (const { lot, isNew, recordedVersion, corrections: made } of each) {
      if (isNew || made.length === 0) continue;
      const { studioId, id, useBy, useByPrecision, manufacturedOn } = lot;
      const changes = { useBy, useByPrecision, manufacturedOn };
      const changed = await transaction.change(Lot, 'lot', { studioId, id }, recordedVersion, changes);
      lot.version = changed.version;
      corrections.push({ lotId: id, changes: made });
    }
    if (corrections.length > 0) transaction.note({ correctedLots: corrections });
    const kept = each.flatMap(({ lot, keptDates }) => keptDates.map((date) => ({ lotId: lot.id, ...date })));
    if (kept.length > 0) transaction.note({ keptDates: kept });
    const codes = each.flatMap(({ lot, addedCodes }) =>
      addedCodes.map((code) => newLotCode(transaction, lot.id, code)),
    );
    if (codes.length > 0) await transaction.insert(LotCode, codes);
  }

  private async lotsWithCodes(
    transaction: Transaction,
    lines: readonly ArrivingLine[],
  ): Promise<LotAtReceipt[]> {
    const codes = lines.flatMap(({ printed }) => (printed.code === null ? [] : [printed.code]));
    if (codes.length === 0) return [];
    const { studioId, manager } = transaction;
    const productIds = lines.map(({ product }) => product.id);
    const lots = await manager.find(Lot, {
      where: { studioId, productId: In([...new Set(productIds)]), code: In([...new Set(codes)]) },
      order: { createdAt: 'ASC', id: 'ASC' },
    });
    if (lots.length === 0) return [];
    const printed = await manager.find(LotCode, {
      where: { studioId, lotId: In(lots.map((lot) => lot.id)), supersededAt: IsNull() },
      order: { recordedAt: 'ASC', id: 'ASC' },
    });
    return lots.map((lot) => ({
      lot,
      codes: printed.filter((row) => row.lotId === lot.id).map(({ kind, code }) => ({ kind, code })),
      isNew: false,
      recordedVersion: lot.version,
      addedCodes: [],
      corrections: [],
      keptDates: [],
    }));
  }
}

function newLot(transaction: Transaction, line: ArrivingLine, origin: LotOrigin): LotAtReceipt {
  const { code, codeState, codes, useBy, useByPrecision, manufacturedOn } = line.printed;
  const lot: Lot = {
    studioId: transaction.studioId,
    id: uuidv7(),
    chainId: transaction.actor.chainId,
    productId: line.product.id,
    code,
    codeState,
    useBy,
    useByPrecision,
    manufacturedOn,
    origin,
    version: 1,
    createdAt: transaction.recordedAt,
  };
  return {
    lot,
    codes: [...codes],
    isNew: true,
    recordedVersion: 0,
    addedCodes: [...codes],
    corrections: [],
    keptDates: [],
  };
}

function correctUseBy(joined: LotAtReceipt, { printed }: ArrivingLine): void {
  joined.corrections.push({ field: 'useBy', from: joined.lot.useBy, to: printed.useBy });
  joined.lot.useBy = printed.useBy;
  joined.lot.useByPrecision = printed.useByPrecision;
}

/** The date on the package is not lost: the audit log and the answer tell it. */
function keepUseBy({ lot, keptDates }: LotAtReceipt, { lineNumber, printed, warnings }: ArrivingLine): void {
  keptDates.push({ lineNumber, printedUseBy: printed.useBy, recordedUseBy: lot.useBy });
  const [onPackage, onRecord] = [printed.useBy, lot.useBy].map((day) => day ?? 'none');
  warnings.push(
    `The package says use-by ${onPackage}, the record ${onRecord}. The record was kept, as was decided; correct the lot if the package is right.`,
  );
}

/** Adds what the package says beyond what is on record; what contradicts it is told. */
function joinLot(joined: LotAtReceipt, { printed }: ArrivingLine, warnings: string[]): void {
  const { lot } = joined;
  for (const code of printed.codes) {
    if (joined.codes.some((known) => known.kind === code.kind && known.code === code.code)) continue;
    joined.codes.push(code);
    joined.addedCodes.push(code);
  }
  const { manufacturedOn } = printed;
  if (manufacturedOn === null || manufacturedOn === lot.manufacturedOn) return;
  if (lot.manufacturedOn === null) {
    joined.corrections.push({ field: 'manufacturedOn', from: null, to: manufacturedOn });
    lot.manufacturedOn = manufacturedOn;
    return;
  }
  warnings.push(
    `The lot is on record as manufactured on ${lot.manufacturedOn}, this package says ${manufacturedOn}. The record was kept; correct the lot if it is wrong.`,
  );
}

function sameCodeProblem(questions: readonly Question[]): Problem {
  const [first] = questions;
  const code = first?.line.printed.code;
  const recorded = first?.recorded.map(({ useBy }) => useBy ?? 'none printed').join(', ');
  const given = first?.line.printed.useBy ?? 'none printed';
  return new Problem(
    409,
    'same-code-other-use-by',
    `${questions.length === 1 ? `Line ${first?.line.lineNumber}` : `${questions.length} lines`}: the code ${code} is on record with the use-by date ${recorded}, but ${given} was given. Nothing was recorded. Compare with the package; then correct the line, or send it with a sameCodeDecision.`,
    {
      lines: questions.map(({ line, recorded, choices }) => ({
        lineNumber: line.lineNumber,
        productId: line.product.id,
        code: line.printed.code,
        given: { useBy: line.printed.useBy, useByPrecision: line.printed.useByPrecision },
        recorded: recorded.map(({ lotId, useBy }) => ({ lotId, useBy })),
        choices,
      })),
    },
  );
}
