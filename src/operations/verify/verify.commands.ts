import type { AddCommands } from '../../platform/commands.js';
import { readConfig } from '../../platform/config.js';
import { openSnapshot, placeOf } from '../../platform/database/snapshot.js';
import { checkRecord } from './record.check.js';
import { headsInBackups, headsRemembered } from './remembered-heads.file.js';
import { type Remembered, reportLines } from './report-words.js';

const foundWrong = 2;

export const addVerifyCommands: AddCommands = (commands) => {
  commands
    .command('verify')
    .description(
      'hold the whole record against its audit log and against the heads that backups remember, also while the service runs',
    )
    .option(
      '--against <paths...>',
      'further backups, exported logs, or folders of them, to compare the audit log with',
    )
    .addHelpText(
      'after',
      '\nExit code: 0 when everything fits together, 2 when something is wrong, 1 when it could not be looked at.',
    )
    // Not in the program: that would bring the schema up to date first, and change what is to be looked at.
    .action(async ({ against = [] }: { against?: string[] }) => {
      const config = readConfig(process.env);
      const remembered = joined(await headsInBackups(config.backupFolder), await headsRemembered(against));
      const snapshot = await openSnapshot(placeOf(config));
      try {
        const report = await checkRecord(snapshot, remembered);
        process.stdout.write(`${reportLines(report).join('\n')}\n`);
        if (report.wrong > 0) process.exitCode = foundWrong;
      } finally {
        await snapshot.close();
      }
    });
};

function joined(one: Remembered, other: Remembered): Remembered {
  return {
    heads: [...one.heads, ...other.heads],
    unreadable: [...one.unreadable, ...other.unreadable],
  };
}
