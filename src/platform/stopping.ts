import { constants } from 'node:os';
import type { INestApplication } from '@nestjs/common';
import type { Log } from './log.js';
import type { ProcessRole } from './process-role.js';

/** What was accepted has so long to be finished; container and service unit wait a little longer. */
export const stopLimitMilliseconds = 20_000;
const closeIdleMilliseconds = 100;
/** One Ctrl-C reaches the service twice, from the terminal and through npm: that is no second signal. */
const sameSignalMilliseconds = 1_000;

/**
 * Ends the service when it is told to. Guarantees: a request that was accepted is answered before anything is closed,
 * with its transaction committed or undone; then rooms end what they do in the background, and the database is closed
 * last. Should that take longer than the limit, the process exits with 1 and says so: what was not acknowledged by then
 * is undone by the database. A second signal ends it at once.
 */
export function stopOnSignal(app: INestApplication, role: ProcessRole, log: Log): void {
  let since = 0;
  for (const signal of ['SIGTERM', 'SIGINT'] as const) {
    process.on(signal, () => {
      if (role.ending) {
        if (Date.now() - since > sameSignalMilliseconds) process.exit(128 + constants.signals[signal]);
        return;
      }
      since = Date.now();
      role.ending = true;
      void stop(app, signal, log);
    });
  }
}

async function stop(app: INestApplication, signal: string, log: Log): Promise<void> {
  log.info({ signal }, 'stopping: what was accepted is finished first');
  setTimeout(() => {
    log.fatal(
      `The service could not finish what it had accepted within ${stopLimitMilliseconds / 1_000} s, and ends now. What was not acknowledged is not recorded.`,
    );
    process.exit(1);
  }, stopLimitMilliseconds);
  const server = app.getHttpServer() as { closeIdleConnections(): void };
  // A connection whose last answer was under way when the server closed would else be kept open for the next request.
  setInterval(() => server.closeIdleConnections(), closeIdleMilliseconds);
  try {
    await app.getHttpAdapter().close();
    await app.close();
    log.info('stopped');
    process.exit(0);
  } catch (error) {
    log.fatal({ err: error }, 'The service could not end in order.');
    process.exit(1);
  }
}
