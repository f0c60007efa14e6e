import {
  closeSync,
  existsSync,
  fstatSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  readSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { Injectable, Logger, type OnApplicationBootstrap } from '@nestjs/common';
import { isISO8601, isUUID } from 'class-validator';
import { StudioActors } from '../identity/studio-actors.service.js';
import { Config } from '../platform/config.js';
import { Database, placeholders } from '../platform/database/database.js';
import { OldPages } from '../platform/database/old-pages.service.js';
import { Transactions } from '../platform/database/transactions.js';
import { DataKeys } from '../platform/encryption/data-keys.service.js';
import { Problem } from '../platform/problem.js';
import { ProcessRole } from '../platform/process-role.js';
import { syncFolder } from '../platform/write-for-good.js';
import { Client } from './client.entity.js';
import { ClientEraser } from './client-eraser.service.js';

/** One line of the list: ids only. */
export interface Erasure {
  studioId: string;
  clientId: string;
  dataKeyId: string;
  erasedAt: string;
}

export interface ReadErasures {
  erasures: Erasure[];
  /** Lines that are no erasure, counted from 1; a last line that was cut off by a crash is not among them. */
  unreadableLines: number[];
}

export interface AppliedErasures {
  /** Clients who were there and are erased now. */
  erasedAgain: number;
  /** Erased already, or never in this database. */
  nothingToDo: number;
  unreadableLines: number[];
}

const erasuresPerLookUp = 500;

/**
 * Who was erased, in a file beside the backups: a restored backup is older than the erasures since, so they are carried
 * out again on it. Guarantees: an erasure is in the file, on the disk, before it is answered; whatever a crash left out
 * is added at the next start, and whatever an older copy of the database brought back is erased again then.
 */
@Injectable()
export class ErasureList implements OnApplicationBootstrap {
  private readonly logger = new Logger('erasures');
  readonly file: string;

  constructor(
    config: Config,
    private readonly role: ProcessRole,
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly dataKeys: DataKeys,
    private readonly oldPages: OldPages,
    private readonly eraser: ClientEraser,
    private readonly studioActors: StudioActors,
  ) {
    this.file = join(config.backupFolder, 'erasures.jsonl');
  }

  async onApplicationBootstrap(): Promise<void> {
    if (!this.role.serving) return;
    const { erasedAgain } = await this.applyAgain();
    if (erasedAgain > 0) {
      this.logger.warn(
        `${erasedAgain} erased clients were back in the database, as from an older copy, and are erased again.`,
      );
    }
    await this.addMissing();
  }

  /** Adds what is erased in the database and not in the file. */
  async addMissing(): Promise<number> {
    const erased = await this.database.read<Erasure>(
      `SELECT studio_id AS "studioId", id AS "clientId", data_key_id AS "dataKeyId", erased_at AS "erasedAt"
       FROM client WHERE erased_at IS NOT NULL ORDER BY erased_at, id`,
    );
    return erased.length === 0 ? 0 : this.add(erased);
  }

  /**
   * Makes sure that the list can be written to, before anything is erased.
   * @throws Problem erasure-not-listed
   */
  requireWritable(): void {
    try {
      mkdirSync(dirname(this.file), { recursive: true, mode: 0o700 });
      closeSync(openSync(this.file, 'a', 0o600));
    } catch (error) {
      throw new Problem(
        503,
        'erasure-not-listed',
        `Nothing was erased, for the list of erasures ${this.file} cannot be written to (${(error as Error).message}). Set the rights of its folder, then ask again.`,
      );
    }
  }

  /** Adds erasures that are not in the file yet, and returns how many; on the disk when this returns. */
  add(erasures: readonly Erasure[]): number {
    const listed = new Set(this.read().erasures.map(keyOf));
    const missing = erasures.filter((erasure) => !listed.has(keyOf(erasure)));
    if (missing.length > 0) appendForGood(this.file, missing.map(lineOf).join(''));
    return missing.length;
  }

  /** @param file another list, such as one brought along with a backup */
  read(file = this.file): ReadErasures {
    if (!existsSync(file)) return { erasures: [], unreadableLines: [] };
    const lines = readFileSync(file, 'utf8').split('\n');
    // What follows the last line break is empty, or was never finished.
    lines.pop();
    const erasures: Erasure[] = [];
    const unreadableLines: number[] = [];
    lines.forEach((line, index) => {
      const erasure = erasureOf(line);
      if (erasure) erasures.push(erasure);
      else if (line !== '') unreadableLines.push(index + 1);
    });
    return { erasures, unreadableLines };
  }

  /**
   * Carries out again, each with its audit entry, what the list says of clients whose keys are there. Doing it twice
   * changes nothing more.
   * @param file another list, such as one brought along with a backup
   */
  async applyAgain(file = this.file): Promise<AppliedErasures> {
    const { erasures, unreadableLines } = this.read(file);
    if (unreadableLines.length > 0) {
      this.logger.error(
        `${file} holds lines that are no erasure: ${unreadableLines.join(', ')}. Look at them: a client named there may have come back.`,
      );
    }
    let erasedAgain = 0;
    for (let start = 0; start < erasures.length; start += erasuresPerLookUp) {
      const batch = erasures.slice(start, start + erasuresPerLookUp);
      for (const erasure of await this.stillThere(batch)) {
        await this.eraseAgain(erasure);
        erasedAgain += 1;
      }
    }
    if (erasedAgain > 0) await this.oldPages.drop();
    if (file !== this.file) this.add(erasures);
    return { erasedAgain, nothingToDo: erasures.length - erasedAgain, unreadableLines };
  }

  private async stillThere(erasures: readonly Erasure[]): Promise<Erasure[]> {
    const rows = await this.database.read<Omit<Erasure, 'erasedAt'>>(
      `SELECT client.studio_id AS "studioId", client.id AS "clientId", client.data_key_id AS "dataKeyId"
       FROM client JOIN data_key ON data_key.studio_id = client.studio_id AND data_key.id = client.data_key_id
       WHERE data_key.wrapped_key IS NOT NULL AND data_key.id IN (${placeholders(erasures, 1)})`,
      erasures.map(({ dataKeyId }) => dataKeyId),
    );
    const there = new Set(rows.map(keyOf));
    // A line that stands there twice is carried out once.
    return erasures.filter((erasure) => there.delete(keyOf(erasure)));
  }

  private async eraseAgain({ studioId, clientId, dataKeyId, erasedAt }: Erasure): Promise<void> {
    const actor = await this.studioActors.of(studioId);
    if (!actor) return;
    await this.transactions.write(
      actor,
      {
        id: null,
        action: 'clients.erase-again',
        subject: { kind: 'client', id: clientId },
        content: null,
      },
      async (transaction) => {
        await transaction.lock('client', [clientId]);
        const client = await transaction.manager.findOneByOrFail(Client, { studioId, id: clientId });
        transaction.note({ erasedAt });
        await this.eraser.erase(transaction, client, erasedAt);
      },
    );
    this.dataKeys.forget(studioId, dataKeyId);
  }
}

const keyOf = ({ studioId, clientId, dataKeyId }: Omit<Erasure, 'erasedAt'>) =>
  `${studioId} ${clientId} ${dataKeyId}`;

function lineOf({ studioId, clientId, dataKeyId, erasedAt }: Erasure): string {
  return `${JSON.stringify({ studioId, clientId, dataKeyId, erasedAt })}\n`;
}

function erasureOf(line: string): Erasure | undefined {
  try {
    const { studioId, clientId, dataKeyId, erasedAt } = JSON.parse(line) as Partial<Erasure>;
    if (![studioId, clientId, dataKeyId].every((id) => isUUID(id)) || !isISO8601(erasedAt)) return undefined;
    return { studioId, clientId, dataKeyId, erasedAt } as Erasure;
  } catch {
    return undefined;
  }
}

/** Appends whole lines; they stay after a power cut. */
function appendForGood(file: string, lines: string): void {
  const folder = dirname(file);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const written = openSync(file, 'a+', 0o600);
  try {
    const { size } = fstatSync(written);
    const last = Buffer.alloc(1);
    // A line that a crash cut off must not swallow the next one.
    const cutOff = size > 0 && readSync(written, last, 0, 1, size - 1) === 1 && last.toString() !== '\n';
    // Not writeSync, which on a full disk writes a part and says so only in its answer.
    writeFileSync(written, cutOff ? `\n${lines}` : lines);
    fsyncSync(written);
  } finally {
    closeSync(written);
  }
  syncFolder(folder);
}
