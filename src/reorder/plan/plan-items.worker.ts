import { createHash } from 'node:crypto';
import { setPriority } from 'node:os';
import { parentPort, workerData } from 'node:worker_threads';
import { studioDemand } from '../demand/demand-of-item.js';
import { computeItem, type PreparedItem, prepareItem } from './item-line.js';
import type { ItemsAnswer, ItemsTask, ItemsWork } from './plan-task.interface.js';

/** Computes items, some at a time, in a thread of its own that gives way to whatever is served meanwhile. */
const { demand, setting, known } = workerData as ItemsTask;
giveWay();
const studio = studioDemand(demand);
parentPort?.on('message', ({ items }: ItemsWork) => {
  const answer: ItemsAnswer = items.map((facts) => {
    const prepared = prepareItem(studio, facts, setting);
    const factsDigest = digestOf(prepared);
    const takenOver = known.has(factsDigest);
    return {
      kind: facts.kind,
      key: facts.key,
      factsDigest,
      computed: takenOver ? null : computeItem(prepared),
    };
  });
  parentPort?.postMessage(answer);
});

/** SHA-256 of all that the line follows from. */
function digestOf(prepared: PreparedItem): string {
  const text = JSON.stringify(prepared, (_, value: unknown) =>
    ArrayBuffer.isView(value) ? [...(value as Float64Array)] : value,
  );
  return createHash('sha256').update(text).digest('hex');
}

/** On Linux a priority is a thread's own; elsewhere it would be that of the whole service. */
function giveWay(): void {
  if (process.platform === 'linux') setPriority(0, 10);
}
