import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { Command } from 'commander';
import { AppModule } from './app.module.js';
import { addIdentityCommands } from './identity/identity.commands.js';
import { addBackupCommands } from './operations/backup/backup.commands.js';
import { addMasterKeysCommands } from './operations/master-keys/master-keys.commands.js';
import { addRestoreCommands } from './operations/restore/restore.commands.js';
import { addRetentionCommands } from './operations/retention/retention.commands.js';
import { addVerifyCommands } from './operations/verify/verify.commands.js';
import type { AddCommands, InProgram } from './platform/commands.js';
import { makeLog } from './platform/log.js';
import { NestLog } from './platform/nest-log.js';
import { Problem } from './platform/problem.js';
import { ProcessRole } from './platform/process-role.js';
import { tellStartFailure } from './platform/start-failure.js';
import { addLocalCertificateCommands } from './platform/tls/local-certificate.commands.js';
import { addForecastsCommands } from './reorder/demand/forecasts.commands.js';

const inProgram: InProgram = async (work, options) => {
  const program = await NestFactory.createApplicationContext(AppModule.for(new ProcessRole(false), options), {
    logger: new NestLog(makeLog({ LOG_LEVEL: 'warn' })),
    abortOnError: false,
  });
  try {
    return await work(program);
  } finally {
    await program.close();
  }
};

/** Each room that is administered from the shell adds its commands. */
const rooms: AddCommands[] = [
  addLocalCertificateCommands,
  addIdentityCommands,
  addBackupCommands,
  addRestoreCommands,
  addMasterKeysCommands,
  addRetentionCommands,
  addVerifyCommands,
  addForecastsCommands,
];

const commands = new Command('lotward').description('Administration from the shell.').showHelpAfterError();
for (const add of rooms) add(commands, inProgram);

commands.parseAsync().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Problem ? error.detail : tellStartFailure(error)}\n`);
  process.exitCode = 1;
});
