import type { LoggerService } from '@nestjs/common';
import type { Log } from './log.js';

type Level = 'debug' | 'info' | 'warn' | 'error' | 'fatal';

/**
 * What the framework says while it puts the rooms together is of use only when that fails, and why it failed is told
 * once, in plain words, by whoever started the program.
 */
const assembling = new Set([
  'NestFactory',
  'InstanceLoader',
  'RoutesResolver',
  'RouterExplorer',
  'NestApplication',
  'ExceptionHandler',
]);

/** Brings what rooms and framework say through Nest's `Logger` to the log. */
export class NestLog implements LoggerService {
  constructor(private readonly to: Log) {}

  log(message: unknown, ...more: unknown[]): void {
    this.write('info', message, more);
  }

  error(message: unknown, ...more: unknown[]): void {
    this.write('error', message, more);
  }

  warn(message: unknown, ...more: unknown[]): void {
    this.write('warn', message, more);
  }

  debug(message: unknown, ...more: unknown[]): void {
    this.write('debug', message, more);
  }

  fatal(message: unknown, ...more: unknown[]): void {
    this.write('fatal', message, more);
  }

  private write(asked: Level, message: unknown, more: unknown[]): void {
    const room = roomOf(more);
    const level = room !== undefined && assembling.has(room) ? 'debug' : asked;
    // Before the room a stack may stand.
    const stack = more.slice(0, -1).find((item) => typeof item === 'string');
    const fields = { ...(room === undefined ? {} : { room }), ...(stack === undefined ? {} : { stack }) };
    if (message instanceof Error) this.to[level]({ ...fields, err: message }, message.message);
    else if (typeof message === 'object' && message !== null) this.to[level]({ ...fields, ...message });
    else this.to[level](fields, String(message));
  }
}

/** Nest gives the name of the logger last. */
function roomOf(more: unknown[]): string | undefined {
  const last = more.at(-1);
  return typeof last === 'string' ? last : undefined;
}
