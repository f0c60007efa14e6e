import { Injectable } from '@nestjs/common';

/** The server's clock, one place so that tests can stand in for it. */
@Injectable()
export class Clock {
  /** The present instant, UTC, ISO 8601 with milliseconds: `2026-03-01T09:30:00.000Z`. */
  now(): string {
    return new Date().toISOString();
  }
}
