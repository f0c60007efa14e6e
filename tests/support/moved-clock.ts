import { Clock } from '../../src/platform/clock.js';

/** A clock that can be put forward. */
export class MovedClock extends Clock {
  private aheadMilliseconds = 0;

  override now(): string {
    return new Date(Date.now() + this.aheadMilliseconds).toISOString();
  }

  forward(hours: number): void {
    this.aheadMilliseconds += hours * 3_600_000;
  }
}
