import { parentPort, workerData } from 'node:worker_threads';
import { openSnapshot } from '../../platform/database/snapshot.js';
import { checkRecord } from './record.check.js';
import type { VerificationTask } from './verification.service.js';

/** One look at the record in a thread of its own, on a connection of its own. */
async function look({ place, remembered, concern }: VerificationTask): Promise<void> {
  const snapshot = await openSnapshot(place);
  try {
    parentPort?.postMessage(await checkRecord(snapshot, remembered, concern));
  } finally {
    await snapshot.close();
  }
}

void look(workerData as VerificationTask);
