import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database, type Read, type SqlValue } from '../../platform/database/database.js';
import { defaultPageSize, pageOf } from '../../platform/page.js';
import { invalidField } from '../../platform/problem.js';
import { lineState } from './transfer-balance.js';
import { type KnownTransfer, TransferRegister } from './transfer-register.service.js';
import type { TransferPageDto } from './transfers.dto.js';
import type {
  ReceivingStudioView,
  TransferLineView,
  TransferPageView,
  TransferSummaryView,
  TransferView,
} from './transfers.views.js';

const maximumStudios = 500;

/** Every transfer of the studio `$1`, sent or expected, with whether anything is in transit. */
const ofStudio = `SELECT transfer.id, CASE transfer.studio_id WHEN $1 THEN 'out' ELSE 'in' END AS direction,
    transfer.studio_id AS sender_id, transfer.receiver_id, transfer.reason, transfer.occurred_at,
    transfer.recorded_at, count(*) AS line_count,
    sum(CASE WHEN outcome.id IS NULL THEN 1 ELSE 0 END) AS lines_in_transit,
    max(CASE WHEN outcome.id IS NULL THEN 1 ELSE 0 END) AS is_open
  FROM transfer
    JOIN transfer_line AS line ON line.studio_id = transfer.studio_id AND line.transfer_id = transfer.id
    LEFT JOIN transfer_outcome AS outcome
      ON outcome.sender_id = line.studio_id AND outcome.line_id = line.id AND outcome.kind <> 'turned up'
  WHERE transfer.studio_id = $1 OR transfer.receiver_id = $1
  GROUP BY transfer.studio_id, transfer.id, transfer.receiver_id, transfer.reason, transfer.occurred_at,
    transfer.recorded_at`;

/** Shows transfers to the two studios they lie between. */
@Injectable()
export class TransferList {
  constructor(
    private readonly database: Database,
    private readonly register: TransferRegister,
  ) {}

  async page(
    actor: Actor,
    { limit = defaultPageSize, after, direction }: TransferPageDto,
  ): Promise<TransferPageView> {
    const parameters: SqlValue[] = [actor.studioId];
    const conditions: string[] = [];
    if (direction !== undefined) conditions.push(`direction = $${parameters.push(direction)}`);
    if (after !== undefined) {
      await this.refuseUnknownStart(actor.studioId, after);
      const last = `SELECT is_open, occurred_at, id FROM known AS last WHERE last.id = $${parameters.push(after)}`;
      conditions.push(`(is_open, occurred_at, id) < (${last})`);
    }
    const rows = await this.database.read<TransferSummaryView>(
      `WITH known AS (${ofStudio})
       SELECT id, direction, sender_id AS "senderId", receiver_id AS "receiverId", reason,
         occurred_at AS "occurredAt", recorded_at AS "recordedAt", line_count AS "lineCount",
         lines_in_transit AS "linesInTransit"
       FROM known ${conditions.length === 0 ? '' : `WHERE ${conditions.join(' AND ')}`}
       ORDER BY is_open DESC, occurred_at DESC, id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: shown, next };
  }

  show(actor: Actor, transferId: string): Promise<TransferView> {
    return this.view(this.database.read, actor.studioId, transferId);
  }

  /** As it stands, inside a transaction or outside. */
  async view(read: Read, studioId: string, transferId: string): Promise<TransferView> {
    return viewOf(await this.register.known(read, studioId, transferId), studioId);
  }

  /** The other studios of the chain. */
  async receivers(actor: Actor): Promise<ReceivingStudioView[]> {
    return this.database.read<ReceivingStudioView>(
      `SELECT id, name FROM studio WHERE chain_id = $1 AND id <> $2
       ORDER BY created_at, id LIMIT ${maximumStudios}`,
      [actor.chainId, actor.studioId],
    );
  }

  private async refuseUnknownStart(studioId: string, after: string): Promise<void> {
    const rows = await this.database.read(
      'SELECT id FROM transfer WHERE id = $1 AND (studio_id = $2 OR receiver_id = $2)',
      [after, studioId],
    );
    if (rows.length > 0) return;
    throw invalidField(
      'after',
      `There is no transfer with the id ${after} to go on from. Give the "next" of the page before, or leave it out.`,
    );
  }
}

function viewOf({ lines, ...transfer }: KnownTransfer, studioId: string): TransferView {
  return {
    ...transfer,
    direction: transfer.senderId === studioId ? 'out' : 'in',
    lineCount: lines.length,
    linesInTransit: lines.filter(({ balance }) => lineState(balance) === 'in transit').length,
    lines: lines.map((line): TransferLineView => {
      const { movementId: _, pieces: __, microlitres: ___, codes: ____, outcomes, balance, ...shown } = line;
      return {
        ...shown,
        lineState: lineState(balance),
        balance,
        outcomes: outcomes.map(
          ({ id: _id, lineId: _lineId, lostPieces, lostMicrolitres, goods, ...outcome }) => ({
            ...outcome,
            lost: { pieces: lostPieces, microlitres: lostMicrolitres },
            goods,
          }),
        ),
      };
    }),
  };
}
