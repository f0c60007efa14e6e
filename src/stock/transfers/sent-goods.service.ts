import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { canonicalJson } from '../../platform/canonical-json.js';
import { placeholders } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { type ContainerFact, ContainerFacts } from '../container-facts.service.js';
import { assumedOpenedLife } from '../container-views.service.js';
import { endOfOpenedLife } from '../opened-life.js';
import type { PrintedCode } from '../printed-facts.js';
import { containerLife } from '../stock-on-hand.js';
import { type ToldHold, TransferLineFacts } from './transfer.entity.js';
import { factsColumns, latestFacts } from './transfer-register.service.js';

/** What is told of a line, without where it is written. */
export type ToldFacts = Omit<TransferLineFacts, 'studioId' | 'id' | 'lineId' | 'revision' | 'recordedAt'>;

type FactsRow = Omit<ToldFacts, 'codes' | 'holds'> & { codes: string; holds: string };

interface LineSent {
  lineId: string;
  containerId: string;
  receiverId: string;
  revision: number;
  told: ToldFacts;
}

/**
 * Tells the receiving studio what the sender knows of goods that left: dates, codes, holds. It is written down for the
 * receiver whenever it changes here, so that a hold placed or a date put right while goods are on their way arrives with
 * them, and one placed later is known where they went.
 */
@Injectable()
export class SentGoods {
  constructor(private readonly containerFacts: ContainerFacts) {}

  /** What is known of containers now, by container id. */
  async toldOf(transaction: Transaction, containerIds: readonly string[]): Promise<Map<string, ToldFacts>> {
    const { studioId, read, actor } = transaction;
    const facts = await this.containerFacts.load(read, studioId, { containerIds, ended: true });
    const assumed = await assumedOpenedLife(read, studioId);
    const printed = await this.printedOf(transaction, [...new Set(facts.map(({ lotId }) => lotId))]);
    return new Map(
      facts.map((fact): [string, ToldFacts] => {
        const life = containerLife(fact, assumed);
        return [
          fact.containerId,
          {
            code: fact.code,
            codeState: fact.codeState,
            codes: printed.get(fact.lotId)?.codes ?? [],
            useBy: fact.useBy,
            useByPrecision: fact.useByPrecision,
            manufacturedOn: printed.get(fact.lotId)?.manufacturedOn ?? null,
            openedAt: life.openedAt,
            usableThrough: endOfOpenedLife({ ...life, timeZone: actor.timeZone }),
            holds: toldHolds(fact),
          },
        ];
      }),
    );
  }

  /** The first that is told of a line. */
  firstFacts(transaction: Transaction, lineId: string, told: ToldFacts): TransferLineFacts {
    return factsRow(transaction, lineId, 1, told);
  }

  /**
   * Tells what has changed of goods of these lots that were sent to other studios and not called back. Call it once the
   * change is written.
   * @returns the studios to which anything new was told
   */
  async follow(transaction: Transaction, lotIds: readonly string[]): Promise<string[]> {
    const lines = await this.linesOf(transaction, [...new Set(lotIds)]);
    if (lines.length === 0) return [];
    const told = await this.toldOf(
      transaction,
      lines.map(({ containerId }) => containerId),
    );
    const news: TransferLineFacts[] = [];
    const receivers = new Set<string>();
    for (const { lineId, containerId, receiverId, revision, told: before } of lines) {
      const now = told.get(containerId);
      if (now === undefined || canonicalJson(now) === canonicalJson(before)) continue;
      news.push(factsRow(transaction, lineId, revision + 1, now));
      receivers.add(receiverId);
    }
    if (news.length > 0) await transaction.insert(TransferLineFacts, news);
    return [...receivers];
  }

  private async linesOf(transaction: Transaction, lotIds: readonly string[]): Promise<LineSent[]> {
    if (lotIds.length === 0) return [];
    const rows = await transaction.query<Omit<LineSent, 'told'> & FactsRow>(
      `SELECT line.id AS "lineId", line.container_id AS "containerId", line.receiver_id AS "receiverId",
         facts.revision, ${factsColumns}
       FROM transfer_line AS line
         JOIN transfer_line_facts AS facts
           ON facts.studio_id = line.studio_id AND facts.line_id = line.id AND ${latestFacts}
       WHERE line.studio_id = $1 AND line.lot_id IN (${placeholders(lotIds)}) AND NOT EXISTS (
         SELECT 1 FROM transfer_outcome AS outcome
         WHERE outcome.sender_id = line.studio_id AND outcome.line_id = line.id AND outcome.kind = 'withdrawn')
       ORDER BY line.id`,
      [transaction.studioId, ...lotIds],
    );
    return rows.map(({ lineId, containerId, receiverId, revision, codes, holds, ...told }) => ({
      ...{ lineId, containerId, receiverId, revision },
      told: { ...told, codes: JSON.parse(codes), holds: JSON.parse(holds) },
    }));
  }

  private async printedOf(
    transaction: Transaction,
    lotIds: readonly string[],
  ): Promise<Map<string, { manufacturedOn: string | null; codes: PrintedCode[] }>> {
    if (lotIds.length === 0) return new Map();
    const rows = await transaction.query<{
      lotId: string;
      manufacturedOn: string | null;
      kind: PrintedCode['kind'] | null;
      code: string | null;
    }>(
      `SELECT lot.id AS "lotId", lot.manufactured_on AS "manufacturedOn", lot_code.kind, lot_code.code
       FROM lot LEFT JOIN lot_code ON lot_code.studio_id = lot.studio_id AND lot_code.lot_id = lot.id
         AND lot_code.superseded_at IS NULL
       WHERE lot.studio_id = $1 AND lot.id IN (${placeholders(lotIds)})
       ORDER BY lot_code.recorded_at, lot_code.id`,
      [transaction.studioId, ...lotIds],
    );
    const printed = new Map<string, { manufacturedOn: string | null; codes: PrintedCode[] }>();
    for (const { lotId, manufacturedOn, kind, code } of rows) {
      const lot = printed.get(lotId) ?? { manufacturedOn, codes: [] };
      printed.set(lotId, lot);
      if (kind !== null && code !== null) lot.codes.push({ kind, code });
    }
    return printed;
  }
}

/** A hold on a box reaches the pieces that were taken out of it. No blend is ever sent, so none comes from a parent. */
function toldHolds({ holds }: ContainerFact): ToldHold[] {
  const told = holds.flatMap(({ kind, reason, on }) => (on === 'parent lot' ? [] : [{ kind, reason, on }]));
  const words = ({ on, kind, reason }: ToldHold) => `${on} ${kind} ${reason}`;
  return told
    .filter((hold, index) => told.findIndex((other) => words(other) === words(hold)) === index)
    .sort((one, other) => (words(one) < words(other) ? -1 : 1));
}

function factsRow(
  { studioId, recordedAt }: Transaction,
  lineId: string,
  revision: number,
  told: ToldFacts,
): TransferLineFacts {
  return { studioId, id: uuidv7(), lineId, revision, ...told, recordedAt };
}
