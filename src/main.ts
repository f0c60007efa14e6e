import 'reflect-metadata';
import { ConsoleLogger } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { AppModule } from './app.module.js';
import { Config, ConfigError, readConfig } from './platform/config.js';
import { SchemaTooNewError } from './platform/database/database.js';
import { MasterKeyError } from './platform/encryption/master-keys.js';
import { makeHttpServer } from './platform/http-server.js';
import { describeApi } from './platform/open-api.js';

const logLevels = ['error', 'warn', 'log', 'debug'] as const;

async function start(): Promise<void> {
  const { LOG_LEVEL } = readConfig(process.env);
  const logger = new ConsoleLogger({
    prefix: 'Lotward',
    logLevels: logLevels.slice(0, logLevels.indexOf(LOG_LEVEL) + 1),
    colors: process.stdout.isTTY === true,
  });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule, makeHttpServer(), {
    logger,
    abortOnError: false,
  });
  app.setGlobalPrefix('api');
  app.enableShutdownHooks();
  describeApi(app);
  const config = app.get(Config);
  await app.listen(config.PORT, config.HOST);
  process.stdout.write(`Lotward is ready on ${await app.getUrl()}\n`);
}

const knownCauses: Record<string, string> = {
  EADDRINUSE: 'The port is used by another program, perhaps by Lotward itself. Stop that one, or set PORT.',
  EACCES: 'The address may not be listened on, or the data folder not written to. Set PORT or DATA_DIR.',
  SQLITE_CANTOPEN: 'The database file cannot be opened. Look at the rights of the folder in DATA_DIR.',
  ECONNREFUSED: 'PostgreSQL does not answer at the address in DATABASE_URL.',
};

/** What a reader can act on is told without a stack. */
function tell(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  if (error instanceof ConfigError || error instanceof SchemaTooNewError || error instanceof MasterKeyError) {
    return error.message;
  }
  const cause = 'code' in error ? knownCauses[String(error.code)] : undefined;
  return cause === undefined ? (error.stack ?? error.message) : `${cause} (${error.message})`;
}

try {
  await start();
} catch (error) {
  process.stderr.write(`${tell(error)}\n`);
  process.exitCode = 1;
}
