import { parentPort, workerData } from 'node:worker_threads';
import { readConfig } from '../../platform/config.js';
import { BackupFailure } from './backup-failure.error.js';
import { makeBackup } from './backup-maker.service.js';
import type { BackupThreadAnswer } from './backup-thread.service.js';
import type { BackupReason } from './manifest.js';

/** One backup in a thread of its own, by the settings of the process. Any message breaks it off. */
async function work(reason: BackupReason): Promise<BackupThreadAnswer> {
  const abort = new AbortController();
  parentPort?.once('message', () => abort.abort());
  parentPort?.unref();
  try {
    const { folder, removed } = await makeBackup(readConfig(process.env), reason, abort.signal);
    return { made: { folder, removed } };
  } catch (error) {
    const { words, message } = error as BackupFailure;
    return {
      failure: { words: error instanceof BackupFailure ? words : 'something unforeseen happened', message },
    };
  }
}

work(workerData as BackupReason).then((answer) => parentPort?.postMessage(answer));
