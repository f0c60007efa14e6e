import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { notFound } from '../../platform/problem.js';
import type { PieceFault } from '../planned-containers.js';
import type { PrintedCode } from '../printed-facts.js';
import type { CodeState, ContainerForm, PresentState, UseByPrecision } from '../vocabulary.js';
import type { ToldHold } from './transfer.entity.js';
import { type LineBalance, lineBalance } from './transfer-balance.js';
import type { OutcomeKind } from './transfer-outcome.entity.js';

/** A transfer with all that both ends may know of it. */
export interface KnownTransfer {
  id: string;
  senderId: string;
  receiverId: string;
  reason: string;
  occurredAt: string;
  recordedAt: string;
  lines: KnownLine[];
}

export interface KnownLine {
  id: string;
  lineNumber: number;
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
  /** In the sending studio. */
  lotId: string;
  containerId: string;
  movementId: string;
  labelCode: string;
  form: ContainerForm;
  state: PresentState;
  pieces: number;
  microlitres: number;
  /** What the sender knows of it now. */
  code: string | null;
  codeState: CodeState;
  codes: PrintedCode[];
  useBy: string | null;
  useByPrecision: UseByPrecision;
  manufacturedOn: string | null;
  openedAt: string | null;
  usableThrough: string | null;
  holds: ToldHold[];
  balance: LineBalance;
  outcomes: KnownOutcome[];
}

export interface KnownOutcome {
  lineId: string;
  id: string;
  kind: OutcomeKind;
  occurredAt: string;
  recordedAt: string;
  reason: string | null;
  lostPieces: number;
  lostMicrolitres: number;
  goods: KnownGoods[];
}

export interface KnownGoods {
  lotId: string;
  containerId: string;
  pieces: number;
  microlitres: number;
  surplusPieces: number;
  fault: PieceFault | null;
}

type LineRow = Omit<KnownLine, 'codes' | 'holds' | 'balance' | 'outcomes'> & { codes: string; holds: string };
type OutcomeRow = Omit<KnownOutcome, 'goods'>;
type GoodsRow = KnownGoods & { outcomeId: string };

export const factsColumns = `facts.code, facts.code_state AS "codeState", facts.codes, facts.use_by AS "useBy",
  facts.use_by_precision AS "useByPrecision", facts.manufactured_on AS "manufacturedOn",
  facts.opened_at AS "openedAt", facts.usable_through AS "usableThrough", facts.holds`;

/** Of the facts told of a line, aliased `facts`, only the latest. */
export const latestFacts = `facts.revision = (
  SELECT max(told.revision) FROM transfer_line_facts AS told
  WHERE told.studio_id = facts.studio_id AND told.line_id = facts.line_id)`;

/**
 * The one place where a studio reads what another wrote. Guarantees: only of transfers that it sent or is sent, and of
 * these only the transfer, its lines with what the sender tells of them, and what became of them; never a row of stock,
 * of a session or of a client of the other studio.
 */
@Injectable()
export class TransferRegister {
  /** @throws Problem not-found unless the studio is one of its two ends */
  async known(read: Read, studioId: string, transferId: string): Promise<KnownTransfer> {
    const [transfer] = await read<Omit<KnownTransfer, 'lines'>>(
      `SELECT id, studio_id AS "senderId", receiver_id AS "receiverId", reason, occurred_at AS "occurredAt",
         recorded_at AS "recordedAt"
       FROM transfer WHERE id = $1 AND (studio_id = $2 OR receiver_id = $2)`,
      [transferId, studioId],
    );
    if (!transfer) throw notFound('transfer', transferId);
    const { senderId } = transfer;
    const outcomes = await this.outcomes(read, senderId, transferId);
    return { ...transfer, lines: await this.lines(read, senderId, transferId, outcomes) };
  }

  /**
   * Locks the lines of a transfer, so that of two that end one only the first does, and so that the sender tells nothing
   * new of them meanwhile. Called after products, lots and containers are locked. SQLite needs no lock.
   */
  async lockLines(transaction: Transaction, transfer: KnownTransfer): Promise<void> {
    if (transaction.engine === 'sqlite') return;
    await transaction.query(
      'SELECT id FROM transfer_line WHERE studio_id = $1 AND transfer_id = $2 ORDER BY id FOR UPDATE',
      [transfer.senderId, transfer.id],
    );
  }

  private async lines(
    read: Read,
    senderId: string,
    transferId: string,
    outcomes: readonly KnownOutcome[],
  ): Promise<KnownLine[]> {
    const rows = await read<LineRow>(
      `SELECT line.id, line.line_number AS "lineNumber", line.product_id AS "productId",
         product.name AS "productName", product.shade, maker.name AS "makerName", line.lot_id AS "lotId",
         line.container_id AS "containerId", line.movement_id AS "movementId", line.label_code AS "labelCode",
         line.form, line.state, line.pieces, line.microlitres, ${factsColumns}
       FROM transfer_line AS line
         JOIN transfer_line_facts AS facts
           ON facts.studio_id = line.studio_id AND facts.line_id = line.id AND ${latestFacts}
         JOIN product ON product.chain_id = line.chain_id AND product.id = line.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE line.studio_id = $1 AND line.transfer_id = $2 ORDER BY line.line_number`,
      [senderId, transferId],
    );
    return rows.map(({ codes, holds, ...row }) => {
      const ofLine = outcomes.filter(({ lineId }) => lineId === row.id);
      const sent = { pieces: row.pieces, microlitres: row.microlitres };
      return {
        ...row,
        codes: JSON.parse(codes) as PrintedCode[],
        holds: JSON.parse(holds) as ToldHold[],
        balance: lineBalance(sent, ofLine.map(saidOf)),
        outcomes: ofLine,
      };
    });
  }

  private async outcomes(read: Read, senderId: string, transferId: string): Promise<KnownOutcome[]> {
    const ofTransfer = `FROM transfer_outcome AS outcome
         JOIN transfer_line AS line ON line.studio_id = outcome.sender_id AND line.id = outcome.line_id`;
    const where = 'WHERE line.studio_id = $1 AND line.transfer_id = $2';
    const rows = await read<OutcomeRow>(
      `SELECT outcome.line_id AS "lineId", outcome.id, outcome.kind, outcome.occurred_at AS "occurredAt",
         outcome.recorded_at AS "recordedAt", outcome.reason, outcome.lost_pieces AS "lostPieces",
         outcome.lost_microlitres AS "lostMicrolitres"
       ${ofTransfer} ${where} ORDER BY outcome.recorded_at, outcome.id`,
      [senderId, transferId],
    );
    if (rows.length === 0) return [];
    const goods = await read<GoodsRow>(
      `SELECT goods.outcome_id AS "outcomeId", goods.lot_id AS "lotId", goods.container_id AS "containerId",
         goods.pieces, goods.microlitres, goods.surplus_pieces AS "surplusPieces", goods.fault
       ${ofTransfer}
         JOIN transfer_goods AS goods ON goods.studio_id = outcome.studio_id AND goods.outcome_id = outcome.id
       ${where} ORDER BY goods.id`,
      [senderId, transferId],
    );
    return rows.map((row) => ({
      ...row,
      goods: goods.filter(({ outcomeId }) => outcomeId === row.id).map(({ outcomeId: _, ...one }) => one),
    }));
  }
}

function saidOf({ kind, lostPieces, lostMicrolitres, goods }: KnownOutcome) {
  return {
    kind,
    lost: { pieces: lostPieces, microlitres: lostMicrolitres },
    came: {
      pieces: goods.reduce((sum, one) => sum + one.pieces, 0),
      microlitres: goods.reduce((sum, one) => sum + one.microlitres, 0),
    },
  };
}
