import { Clock } from '../../src/platform/clock.js';

/** A clock that can be put forward. */
export class MovedClock extends Clock {
  private aheadMilliseconds = 0;

  override now(): string {
    return new Date(Date.now() + this.aheadMilliseconds).toISOString();
  }

  /** @param instant ISO 8601; it goes on from there */
  moveTo(instant: string): void {
    this.aheadMilliseconds = Date.parse(instant) - Date.now();
  }

  forward(hours: number): void {
    this.aheadMilliseconds += hours * 3_600_000;
  }
}
