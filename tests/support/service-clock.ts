import { mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/** The clock of a service in a process of its own, which can be put forward while it runs. */
export class ServiceClock {
  private readonly folder = mkdtempSync(join(tmpdir(), 'lotward-clock-'));
  private readonly file = join(this.folder, 'ahead');
  private ahead = 0;
  /** Milliseconds since 1970 at which it stands. */
  private standing: number | undefined;

  constructor() {
    this.tell();
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
    const milliseconds = (((days * 24 + hours) * 60 + minutes) * 60 + seconds) * 1000;
    if (this.standing === undefined) this.ahead += milliseconds;
    else this.standing += milliseconds;
    this.tell();
  }

  /** From now on it goes only forward when it is put forward, so that nothing depends on how fast the machine is. */
  standStill(): void {
    this.standing = Date.now() + this.ahead;
    this.tell();
  }

  /** Goes on from where it stands. */
  goOn(): void {
    if (this.standing !== undefined) this.ahead = this.standing - Date.now();
    this.standing = undefined;
    this.tell();
  }

  /** The present instant by this clock. */
  now(): string {
    return new Date(this.standing ?? Date.now() + this.ahead).toISOString();
  }

  /** Renamed into place: the service reads it at any time, and half a file would be another time. */
  private tell(): void {
    const told = `${this.file}.new`;
    writeFileSync(told, this.standing === undefined ? String(this.ahead) : `=${this.standing}`);
    renameSync(told, this.file);
  }

  dispose(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}
