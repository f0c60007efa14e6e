import { isDeepStrictEqual } from 'node:util';
import { Logger } from '@nestjs/common';
import type { Config } from '../../platform/config.js';
import { openSnapshot } from '../../platform/database/snapshot.js';
import { OperatorError } from '../../platform/operator-error.js';
import { BackupFailure } from './backup-failure.error.js';
import { makeBackup } from './backup-maker.service.js';
import { BackupShelf } from './backup-shelf.service.js';
import { damageOf } from './file-copies.service.js';
import { readRecordFacts } from './record-facts.service.js';

/**
 * Sees to the backup that is there when an update of the schema goes wrong. When the last one shows the record just as it
 * is, as after a start that failed in the middle of an update, that one will do: a service that is started again and again
 * must not push all older ones out.
 * @param pending names of the migrations that are about to be carried out
 * @throws OperatorError when it cannot be made; the schema is then left as it is
 */
export async function backUpBeforeMigrating(config: Config, pending: readonly string[]): Promise<void> {
  const steps = pending.length === 1 ? 'one step' : `${pending.length} steps`;
  try {
    const folder = (await presentBackup(config)) ?? (await makeBackup(config, 'before-migration')).folder;
    new Logger('backup').log(
      `The database is brought up to date by ${steps}; how it was before is in ${folder}`,
    );
  } catch (error) {
    if (!(error instanceof BackupFailure)) throw error;
    throw new OperatorError(
      `The database has to be brought up to date by ${steps}, but not without a backup, so nothing was changed. ${error.message} Put that right and start again; the version that ran before still runs on this database.`,
    );
  }
}

/** The folder of the last backup when it is whole and shows the record as it stands. */
async function presentBackup(config: Config): Promise<string | undefined> {
  const last = new BackupShelf(config.backupFolder).lastGood(new Date().toISOString());
  if (!last) return undefined;
  const { migrations, heads, masterKeyIds, engine } = last.manifest;
  const url = config.DATABASE_URL;
  const snapshot = await openSnapshot(url === undefined ? { file: config.sqliteFile } : { url });
  try {
    if (engine !== snapshot.engine) return undefined;
    const facts = await readRecordFacts(engine, (sql) => snapshot.read(sql));
    if (!isDeepStrictEqual(facts, { migrations, heads, masterKeyIds })) return undefined;
    return (await damageOf(last.folder, last.manifest)).length === 0 ? last.folder : undefined;
  } finally {
    await snapshot.close();
  }
}
