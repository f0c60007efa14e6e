import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import type { FastifyInstance } from 'fastify';
import { AppModule } from './app.module.js';
import { SetUpLinks } from './identity/sign-in/set-up-links.service.js';
import { Config, readConfig } from './platform/config.js';
import { makeHttpServer } from './platform/http-server.js';
import { makeLog } from './platform/log.js';
import { NestLog } from './platform/nest-log.js';
import { describeApi } from './platform/open-api.js';
import { OpenRequests } from './platform/open-requests.js';
import { ProcessRole } from './platform/process-role.js';
import { tellStartFailure } from './platform/start-failure.js';
import { startRemarks } from './platform/start-remarks.js';
import { stopOnSignal } from './platform/stopping.js';
import { tlsFaults } from './platform/tls/tls-files.js';
import { serveWebApp } from './platform/web-app.js';

async function start(): Promise<void> {
  const settings = readConfig(process.env, tlsFaults);
  const log = makeLog(settings);
  process.on('uncaughtException', (error) => {
    log.fatal(
      { err: error },
      'An error nobody expected. The service ends, since its state is not known any more.',
    );
    process.exit(1);
  });
  const role = new ProcessRole(true);
  const openRequests = new OpenRequests();
  const app = await NestFactory.create<NestFastifyApplication>(
    AppModule.for(role),
    await makeHttpServer(settings, log, role, openRequests),
    // Fastify reads JSON by itself; Nest would add forms, which a page of another site can send.
    { logger: new NestLog(log), abortOnError: false, bodyParser: false },
  );
  app.setGlobalPrefix('api', { exclude: ['health/live', 'health/ready'] });
  stopOnSignal(app, role, openRequests, log);
  describeApi(app);
  await serveWebApp(app.getHttpAdapter().getInstance() as unknown as FastifyInstance, log);
  const config = app.get(Config);
  await app.listen(config.PORT, config.HOST);
  config.PORT = (app.getHttpServer().address() as { port: number }).port;
  for (const remark of startRemarks(config)) process.stdout.write(`\nTAKE CARE: ${remark}\n`);
  await tellSetUpLink(app);
  process.stdout.write(`Lotward is ready on ${config.ownUrl}\n`);
  if (config.publicUrl !== config.ownUrl) process.stdout.write(`People reach it at ${config.publicUrl}\n`);
}

/** The first owner comes in by a link that only who sees the console can know. */
async function tellSetUpLink(app: NestFastifyApplication): Promise<void> {
  const made = await app.get(SetUpLinks).make();
  if (!made) return;
  process.stdout.write(
    `\nNobody has an account yet. Open this link to set Lotward up; it works once, until ${made.expiresAt}:\n${made.link}\n\n`,
  );
}

start().catch((error: unknown) => {
  process.stderr.write(`${tellStartFailure(error)}\n`);
  // What was opened so far, such as the way to Redis, would keep the process alive.
  process.exit(1);
});
