import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { AppModule } from './app.module.js';
import { Readiness } from './operations/health/readiness.service.js';
import { type Config, readConfig } from './platform/config.js';
import { makeLog } from './platform/log.js';
import { NestLog } from './platform/nest-log.js';
import { ProcessRole } from './platform/process-role.js';
import { giveSignsOfLife } from './platform/sign-of-life.js';
import { tellStartFailure } from './platform/start-failure.js';
import { stopWorkerOnSignal } from './platform/stopping.js';

/** A worker takes its work from Redis and writes beside the service, which SQLite lets only one process do well. */
function workerFaults(config: Config): string[] {
  const faults: string[] = [];
  if (config.DATABASE_URL === undefined) {
    faults.push(
      'DATABASE_URL is not set: workers need PostgreSQL, the same as the service. With SQLite the service delivers by itself; no worker is needed',
    );
  }
  if (config.REDIS_URL === undefined) {
    faults.push(
      'REDIS_URL is not set: workers take their work from Redis, the same as the service. Without it the service delivers by itself; no worker is needed',
    );
  }
  return faults;
}

/** Delivers alerts and does what fires by time, beside a service and other workers. */
async function start(): Promise<void> {
  const settings = readConfig(process.env, workerFaults);
  const log = makeLog(settings);
  process.on('uncaughtException', (error) => {
    log.fatal(
      { err: error },
      'An error nobody expected. The worker ends, since its state is not known any more.',
    );
    process.exit(1);
  });
  const role = new ProcessRole(false, true);
  const program = await NestFactory.createApplicationContext(AppModule.for(role), {
    logger: new NestLog(log),
    abortOnError: false,
  });
  stopWorkerOnSignal(program, role, log);
  const readiness = program.get(Readiness, { strict: false });
  giveSignsOfLife(() => readiness.isReady());
  process.stdout.write('The worker is ready\n');
}

start().catch((error: unknown) => {
  process.stderr.write(`${tellStartFailure(error)}\n`);
  // What was opened so far, such as the way to Redis, would keep the process alive.
  process.exit(1);
});
