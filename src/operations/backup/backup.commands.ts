import type { AddCommands } from '../../platform/commands.js';
import { readConfig } from '../../platform/config.js';
import { makeBackup } from './backup-maker.service.js';

export const addBackupCommands: AddCommands = (commands) => {
  commands
    .command('backup')
    .description('back up the database and its files to BACKUP_DIR, also while the service runs')
    // Not in the program: that would bring the schema up to date first, under the feet of a service that still runs.
    .action(async () => {
      const abort = new AbortController();
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => abort.abort());
      const { folder, manifest, removed } = await makeBackup(
        readConfig(process.env),
        'by-command',
        abort.signal,
      );
      const bytes = manifest.files.reduce((sum, file) => sum + file.bytes, 0);
      print(`Backed up to ${folder}: ${(bytes / 1_000_000).toFixed(1)} MB, checked.`);
      for (const name of removed.names) print(`Removed the older ${name}.`);
      for (const fault of removed.faults) print(`An older backup stays: ${fault}`);
      print(
        `The key file is not in it. Names in it can be read with the keys ${manifest.masterKeyIds.join(', ')}.`,
      );
    });
};

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
