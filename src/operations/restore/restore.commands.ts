import { existsSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import type { AppliedErasures } from '../../clients/erasure-list.service.js';
import type { AddCommands, InProgram } from '../../platform/commands.js';
import { type Config, readConfig } from '../../platform/config.js';
import { openSnapshot } from '../../platform/database/snapshot.js';
import { OperatorError } from '../../platform/operator-error.js';
import { copyFiles, copyForGood, filesBelow } from '../backup/file-copies.service.js';
import { filesFolder } from '../backup/manifest.js';
import { checkRecord } from '../verify/record.check.js';
import { headsRemembered } from '../verify/remembered-heads.file.js';
import { type Remembered, reportLines, type VerifyReport } from '../verify/report-words.js';
import { openSource, type RestoreSource } from './restore-source.service.js';
import { RestoreTarget } from './restore-target.service.js';
import { firstTable, requireEmptyDatabase, restoreDatabase } from './restored-database.service.js';
import { RestoredRecord } from './restored-record.service.js';

interface RestoreOptions {
  into: string;
  keys?: string;
  erasures?: string;
}

const foundWrong = 2;

export const addRestoreCommands: AddCommands = (commands, inProgram) => {
  commands
    .command('restore')
    .description(
      'restore a backup into a fresh data folder, and into the empty database of DATABASE_URL if it is set',
    )
    .argument('<backup>', 'the folder of one backup')
    .requiredOption(
      '--into <folder>',
      'the data folder to make; it holds nothing yet, or nothing but the key file',
    )
    .option(
      '--keys <file>',
      'your copy of the key file; needed unless MASTER_KEY_FILE or the folder holds it',
    )
    .option('--erasures <file>', 'the latest list of erasures, when it does not lie beside the backup')
    .addHelpText(
      'after',
      '\nExit code: 0 when the record was restored, 2 when it was restored and does not fit together, 1 when nothing was restored.',
    )
    .action((backup: string, options: RestoreOptions) => restore(backup, options, inProgram));
};

async function restore(
  backup: string,
  { into, keys, erasures }: RestoreOptions,
  inProgram: InProgram,
): Promise<void> {
  const target = new RestoreTarget(into);
  // From here on the program works in the folder that is being filled.
  process.env.DATA_DIR = target.work;
  const config = readConfig(process.env);
  const source = await openSource(
    backup,
    config.DATABASE_URL === undefined ? 'sqlite' : 'postgres',
    keyFile(target, keys),
  );
  if (process.env.MASTER_KEY_FILE === undefined) target.requireNoOtherKeys(source.keyFile);
  const lists = listsOfErasures(source, erasures);
  await requireEmptyDatabase(config);
  // Read before anything else: a service that still runs may rotate the backup away meanwhile.
  const remembered = await headsRemembered([source.folder]);
  target.begin();
  let report: VerifyReport;
  try {
    await fill(config, source);
    tellErasures(
      // How it was before a migration is in the backup itself, and one more could push that one off its shelf.
      await inProgram(
        async (program) => {
          const record = program.get(RestoredRecord);
          await record.settle(basename(source.folder), source.manifest);
          return record.eraseAgain(lists);
        },
        { backsUpBeforeMigrating: false },
      ),
      lists,
    );
    report = await verify(config, remembered);
    target.complete(config.sqliteFile);
  } catch (error) {
    target.abandon();
    await tellFilledDatabase(config);
    throw error;
  }
  tell(source, target, report);
}

/** The key file to restore with: the one named, else the one the settings name, else the one that lies there already. */
function keyFile(target: RestoreTarget, keys: string | undefined): string {
  const set = process.env.MASTER_KEY_FILE;
  if (set === undefined) return keys ?? target.keyFile;
  if (keys === undefined) return set;
  throw new OperatorError(
    'The key file is named twice, by --keys and by MASTER_KEY_FILE. Leave one of them out.',
  );
}

/** The list that lies beside the backup, which is as new as the newest backup there, and the one that is named. */
function listsOfErasures({ folder }: RestoreSource, named: string | undefined): string[] {
  if (named !== undefined && !existsSync(named)) {
    throw new OperatorError(`There is no list of erasures ${named}. Name the file, or leave --erasures out.`);
  }
  const beside = join(dirname(folder), 'erasures.jsonl');
  return [beside, ...(named === undefined ? [] : [named])].map((file) => resolve(file)).filter(existsSync);
}

async function fill(config: Config, { folder, manifest, keyFile }: RestoreSource): Promise<void> {
  if (process.env.MASTER_KEY_FILE === undefined) await copyForGood(keyFile, config.masterKeyFile);
  const kept = join(folder, filesFolder);
  await copyFiles(kept, config.filesFolder, await filesBelow(kept));
  await restoreDatabase(config, folder, manifest);
}

async function verify(config: Config, remembered: Remembered): Promise<VerifyReport> {
  const url = config.DATABASE_URL;
  const snapshot = await openSnapshot(url === undefined ? { file: config.sqliteFile } : { url });
  try {
    return await checkRecord(snapshot, remembered);
  } finally {
    await snapshot.close();
  }
}

/** A folder can be emptied again, a database of somebody's server is left to them. */
async function tellFilledDatabase({ DATABASE_URL: url }: Config): Promise<void> {
  const table = url === undefined ? undefined : await firstTable(url).catch(() => undefined);
  if (table === undefined) return;
  process.stderr.write('The database in DATABASE_URL is filled by now: drop it before you try again.\n');
}

function tellErasures({ erasedAgain, unreadableLines }: AppliedErasures, lists: readonly string[]): void {
  if (lists.length === 0) {
    print(
      'No list of erasures (erasures.jsonl) lies beside the backup. If clients were erased since it was made, they are back: restore again with --erasures.',
    );
    return;
  }
  print(
    `Erased again: ${erasedAgain === 1 ? 'one client' : `${erasedAgain} clients`}, by ${lists.join(' and ')}.`,
  );
  if (unreadableLines.length > 0) {
    print(
      `TAKE CARE: ${unreadableLines.length} lines of it cannot be read; a client named there may be back.`,
    );
  }
}

function tell({ manifest }: RestoreSource, { folder }: RestoreTarget, report: VerifyReport): void {
  print(`Restored into ${folder}: the record as it stood at ${manifest.madeAt}.`);
  for (const line of reportLines(report)) print(line);
  if (report.wrong > 0) {
    // The sums are right, so the record was like this when it was backed up; with its faults it is worth more than none.
    process.exitCode = foundWrong;
    print('It was put into place with these faults, which it had when it was backed up.');
  }
  print(
    'What was recorded later is not in it. People, roles and tokens are as they were then: look whether any were withdrawn since.',
  );
  print('Everybody has to sign in again, tablets have to be enrolled again, and one-time links have ended.');
  const also = ['DATABASE_URL', 'MASTER_KEY_FILE', 'BACKUP_DIR'].filter(
    (name) => process.env[name] !== undefined,
  );
  print(
    `Start the service on it: DATA_DIR=${folder} npm start${also.length > 0 ? `, with ${also.join(' and ')} set as now` : ''}`,
  );
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
