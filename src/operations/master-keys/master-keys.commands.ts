import type { AddCommands } from '../../platform/commands.js';
import { Config } from '../../platform/config.js';
import { MasterKeys } from '../../platform/encryption/master-keys.js';
import { BackupShelf } from '../backup/backup-shelf.service.js';
import { MasterKeyRotation } from './master-key-rotation.service.js';

const backUpTheFile = 'Copy the file now to where you keep its copy, apart from the database and its backups';

/** Whoever may read the key file may do this. */
export const addMasterKeysCommands: AddCommands = (commands, inProgram) => {
  commands
    .command('rotate-master-key')
    .description('make a new master key and wrap all keys by it, also while the service runs; safe to repeat')
    .option(
      '--drop-old',
      'make no new key, but drop the older ones: backups that need them can then not be read any more',
    )
    .action(({ dropOld }: { dropOld?: true }) =>
      inProgram(async (program) => {
        const rotation = program.get(MasterKeyRotation);
        const { file } = program.get(MasterKeys);
        if (dropOld)
          tellDropped(await rotation.dropOld(), file, new BackupShelf(program.get(Config).backupFolder));
        else tellRotated(await rotation.rotate(), file);
      }),
    );
};

function tellRotated(
  { currentId, isNew, rewrapped, olderIds }: Awaited<ReturnType<MasterKeyRotation['rotate']>>,
  file: string,
): void {
  if (isNew)
    print(
      `The new master key ${currentId} is the current one in ${file}; ${rewrapped} keys were wrapped by it.`,
    );
  else {
    print(`A rotation that was broken off was finished: ${rewrapped} keys were wrapped by ${currentId}.`);
    print('No newer key was made. Run the command again if you want one.');
  }
  print(`${backUpTheFile}: a copy made before does not open what is written from now on.`);
  if (olderIds.length > 0) {
    print(
      `Older keys stay in the file for the backups that need them: ${olderIds.join(', ')}. When you want none of those any more: rotate-master-key --drop-old.`,
    );
  }
}

function tellDropped(dropped: readonly string[], file: string, shelf: BackupShelf): void {
  if (dropped.length === 0) {
    print(`There was no older key to drop in ${file}.`);
    return;
  }
  print(`Dropped from ${file}: ${dropped.join(', ')}.`);
  print(
    `${backUpTheFile}, and destroy the older copies: whoever has one can read what the dropped keys wrapped.`,
  );
  const lost = shelf
    .backups()
    .filter(({ manifest }) => manifest.masterKeyIds.some((id) => dropped.includes(id)));
  if (lost.length > 0) {
    print('These backups can be restored only with an older copy of the key file:');
    for (const { name } of lost) print(`  ${name}`);
  }
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
