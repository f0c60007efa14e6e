import { constants } from 'node:os';
import type { INestApplication, INestApplicationContext } from '@nestjs/common';
import type { Log } from './log.js';
import type { OpenRequests } from './open-requests.js';
import type { ProcessRole } from './process-role.js';

/** What was accepted has so long to be finished; container and service unit wait a little longer. */
export const stopLimitMilliseconds = 20_000;
/** What is on its way when the last answer is out is still read and refused, not cut off. */
const onItsWayMilliseconds = 100;
/** One Ctrl-C reaches the service twice, from the terminal and through npm: that is no second signal. */
const sameSignalMilliseconds = 1_000;

/**
 * Ends the service when it is told to. Guarantees: a request that was accepted is answered, and its answer is out,
 * before anything is closed; what comes after is refused, so that it can be sent again; then rooms end what they do in
 * the background, and the database is closed last. Should that take longer than the limit, the process exits with 1 and
 * says so: what was not acknowledged by then is undone by the database. A second signal ends it at once.
 */
export function stopOnSignal(
  app: INestApplication,
  role: ProcessRole,
  openRequests: OpenRequests,
  log: Log,
): void {
  onSignal(role, log, async () => {
    await openRequests.allAnswered();
    await new Promise((wake) => setTimeout(wake, onItsWayMilliseconds));
    const closed = app.getHttpAdapter().close();
    // What is left are senders of requests that never became whole.
    (app.getHttpServer() as { closeAllConnections(): void }).closeAllConnections();
    await closed;
    await app.close();
  });
}

/**
 * The same for a worker: deliveries that are being made come to their end, or are made again later under the same id.
 */
export function stopWorkerOnSignal(program: INestApplicationContext, role: ProcessRole, log: Log): void {
  onSignal(role, log, () => program.close());
}

function onSignal(role: ProcessRole, log: Log, stop: () => Promise<void>): void {
  let since = 0;
  for (const signal of ['SIGTERM', 'SIGINT'] as const) {
    process.on(signal, () => {
      if (role.ending) {
        if (Date.now() - since > sameSignalMilliseconds) process.exit(128 + constants.signals[signal]);
        return;
      }
      since = Date.now();
      role.ending = true;
      log.info({ signal }, 'ending: what was accepted is finished first');
      setTimeout(() => {
        log.fatal(
          `The service could not finish what it had accepted within ${stopLimitMilliseconds / 1_000} s, and ends now. What was not acknowledged is not recorded.`,
        );
        process.exit(1);
      }, stopLimitMilliseconds);
      void end(stop, log);
    });
  }
}

async function end(stop: () => Promise<void>, log: Log): Promise<void> {
  try {
    await stop();
    log.info('ended');
    process.exit(0);
  } catch (error) {
    log.fatal({ err: error }, 'The service could not end in order.');
    process.exit(1);
  }
}
