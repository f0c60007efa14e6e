import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/** The clock of a service in a process of its own, which can be put forward while it runs. */
export class ServiceClock {
  private readonly folder = mkdtempSync(join(tmpdir(), 'lotward-clock-'));
  private readonly file = join(this.folder, 'ahead');
  private ahead = 0;

  constructor() {
    writeFileSync(this.file, '0');
  }

  /** What the service is to be started with. */
  get environment(): Record<string, string> {
    // The same file also for what was built, where it is not.
    return {
      NODE_OPTIONS: `--import ${resolve('tests/support/moved-date.mjs')}`,
      LOTWARD_TEST_CLOCK: this.file,
    };
  }

  /** By a negative time it steps back. */
  forward(time: { seconds?: number; minutes?: number; hours?: number; days?: number }): void {
    const { seconds = 0, minutes = 0, hours = 0, days = 0 } = time;
    this.ahead += (((days * 24 + hours) * 60 + minutes) * 60 + seconds) * 1000;
    writeFileSync(this.file, String(this.ahead));
  }

  /** The present instant by this clock. */
  now(): string {
    return new Date(Date.now() + this.ahead).toISOString();
  }

  dispose(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}
