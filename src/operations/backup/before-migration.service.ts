import { Logger } from '@nestjs/common';
import type { Config } from '../../platform/config.js';
import { OperatorError } from '../../platform/operator-error.js';
import { BackupFailure } from './backup-failure.error.js';
import { makeBackup } from './backup-maker.service.js';

/**
 * Makes the backup that is there when an update of the schema goes wrong.
 * @param pending names of the migrations that are about to be carried out
 * @throws OperatorError when it cannot be made; the schema is then left as it is
 */
export async function backUpBeforeMigrating(config: Config, pending: readonly string[]): Promise<void> {
  const steps = pending.length === 1 ? 'one step' : `${pending.length} steps`;
  try {
    const { folder } = await makeBackup(config, 'before-migration');
    new Logger('backup').log(
      `Before the database is brought up to date by ${steps}, it was backed up to ${folder}`,
    );
  } catch (error) {
    if (!(error instanceof BackupFailure)) throw error;
    throw new OperatorError(
      `The database has to be brought up to date by ${steps}, but not without a backup, so nothing was changed. ${error.message} Put that right and start again; the version that ran before still runs on this database.`,
    );
  }
}
