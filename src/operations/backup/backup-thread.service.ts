import { Worker } from 'node:worker_threads';
import type { MadeBackup } from './backup-maker.service.js';
import type { BackupReason } from './manifest.js';

export type BackupThreadAnswer =
  | { made: Pick<MadeBackup, 'folder' | 'removed'> }
  | { failure: { words: string; message: string } };

const breakOffMilliseconds = 3_000;

/** Makes a backup in a thread of its own, so that whoever is being served meanwhile does not wait. */
export class BackupThread {
  readonly answer: Promise<BackupThreadAnswer>;
  private readonly worker: Worker;

  constructor(reason: BackupReason) {
    this.worker = new Worker(new URL('./backup.worker.js', import.meta.url), { workerData: reason });
    this.answer = new Promise((resolve) => {
      const failed = (message: string) =>
        resolve({ failure: { words: 'something unforeseen happened', message } });
      this.worker.once('message', resolve);
      this.worker.once('error', (error: Error) => failed(error.message));
      // Without effect when the answer came first.
      this.worker.once('exit', () => failed('The backup was broken off.'));
    });
  }

  /** Lets the backup clean up after itself, but waits for that only so long. */
  async breakOff(): Promise<void> {
    this.worker.postMessage('break off');
    const timer = setTimeout(() => void this.worker.terminate(), breakOffMilliseconds);
    await this.answer;
    clearTimeout(timer);
  }
}
