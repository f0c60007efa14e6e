import 'reflect-metadata';
import { ConsoleLogger } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import { AppModule } from './app.module.js';
import { Config, ConfigError, readConfig } from './platform/config.js';
import { SchemaTooNewError } from './platform/database/database.js';
import { MasterKeyError } from './platform/encryption/master-keys.js';
import { describeApi } from './platform/open-api.js';

/** A body larger than this is refused before it is read. */
const maximumBodyBytes = 1_048_576;

const logLevels = ['error', 'warn', 'log', 'debug'] as const;

async function start(): Promise<void> {
  const { LOG_LEVEL } = readConfig(process.env);
  const logger = new ConsoleLogger({
    prefix: 'Lotward',
    logLevels: logLevels.slice(0, logLevels.indexOf(LOG_LEVEL) + 1),
    colors: process.stdout.isTTY === true,
  });
  const app = await NestFactory.create<NestFastifyApplication>(
    AppModule,
    new FastifyAdapter({ bodyLimit: maximumBodyBytes }),
    { logger, abortOnError: false },
  );
  app.setGlobalPrefix('api');
  app.enableShutdownHooks();
  describeApi(app);
  const config = app.get(Config);
  await app.listen(config.PORT, config.HOST);
  process.stdout.write(`Lotward is ready on ${await app.getUrl()}\n`);
}

try {
  await start();
} catch (error) {
  const told =
    error instanceof ConfigError || error instanceof SchemaTooNewError || error instanceof MasterKeyError;
  process.stderr.write(`${told ? error.message : error instanceof Error ? error.stack : String(error)}\n`);
  process.exitCode = 1;
}
