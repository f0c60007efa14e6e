import 'reflect-metadata';
import { ConsoleLogger } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { AppModule } from './app.module.js';
import { Config, readConfig } from './platform/config.js';
import { makeHttpServer } from './platform/http-server.js';
import { describeApi } from './platform/open-api.js';
import { ProcessRole } from './platform/process-role.js';
import { tellStartFailure } from './platform/start-failure.js';

const logLevels = ['error', 'warn', 'log', 'debug'] as const;

async function start(): Promise<void> {
  const { LOG_LEVEL } = readConfig(process.env);
  const logger = new ConsoleLogger({
    prefix: 'Lotward',
    logLevels: logLevels.slice(0, logLevels.indexOf(LOG_LEVEL) + 1),
    colors: process.stdout.isTTY === true,
  });
  const app = await NestFactory.create<NestFastifyApplication>(
    AppModule.for(new ProcessRole(true)),
    makeHttpServer(),
    {
      logger,
      abortOnError: false,
    },
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
  process.stderr.write(`${tellStartFailure(error)}\n`);
  process.exitCode = 1;
}
