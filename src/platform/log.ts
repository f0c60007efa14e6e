import pino, { type DestinationStream, type Logger } from 'pino';
import type { Config } from './config.js';

export type Log = Logger;

/** Members whose values are never written, wherever they stand in what is logged. */
const withheld = [
  'authorization',
  'cookie',
  'set-cookie',
  'password',
  'secret',
  'token',
  'name',
  'contact',
  'note',
  'text',
];
const withheldDepth = 3;

const withheldPaths = withheld.flatMap((member) =>
  Array.from({ length: withheldDepth }, (_, depth) =>
    `${'*.'.repeat(depth)}["${member}"]`.replace('.[', '['),
  ),
);

const levels = { error: 'error', warn: 'warn', log: 'info', debug: 'debug' } as const;

/** What of an error is written: not what hangs on it, since a failed query carries its parameters. */
function errorFields(error: unknown): object {
  if (!(error instanceof Error)) return { message: String(error) };
  return { type: error.name, message: error.message, stack: error.stack };
}

/**
 * The log of the service: one JSON object a line with `level`, `time` (UTC) and `msg`, on the error output, so that the
 * standard output holds only what is meant for people and for programs that asked.
 */
export function makeLog(
  { LOG_LEVEL }: Pick<Config, 'LOG_LEVEL'>,
  // Written at once: a service that is killed leaves what it had said.
  destination: DestinationStream = pino.destination({ dest: 2, sync: true }),
): Log {
  return pino(
    {
      level: levels[LOG_LEVEL],
      base: null,
      timestamp: pino.stdTimeFunctions.isoTime,
      formatters: { level: (level) => ({ level }) },
      // An address as it was typed may hold anything.
      serializers: { err: errorFields, req: () => undefined },
      redact: { paths: withheldPaths, censor: '[withheld]' },
    },
    destination,
  );
}
