import { createHash } from 'node:crypto';
import { setPriority } from 'node:os';
import { parentPort, workerData } from 'node:worker_threads';
import { studioDemand } from '../demand/demand-of-item.js';
import { computeItem, type PlanItemFacts, prepareItem } from './item-line.js';
import type { AnsweredItem, ItemsAnswer, ItemsTask, ItemsWork } from './plan-task.interface.js';
import { uncomputedItem } from './uncomputed-item.js';

/** Computes items, some at a time, in a thread of its own that gives way to whatever is served meanwhile. */
const { demand, setting, known } = workerData as ItemsTask;
giveWay();
const studio = studioDemand(demand);
parentPort?.on('message', ({ items }: ItemsWork) => {
  const answer: ItemsAnswer = items.map(answerTo);
  parentPort?.postMessage(answer);
});

/** An item that cannot be computed is a line that says so: the others do not fail with it. */
function answerTo(facts: PlanItemFacts): AnsweredItem {
  const { kind, key } = facts;
  try {
    const prepared = prepareItem(studio, facts, setting);
    const factsDigest = digestOf(prepared);
    const computed = known.has(factsDigest) ? null : computeItem(prepared);
    return { kind, key, factsDigest, computed, fault: null };
  } catch (error) {
    const fault = error instanceof Error ? (error.stack ?? error.message) : String(error);
    // Never taken over: it is tried again.
    const factsDigest = digestOf(['could not be computed', fault, facts]);
    return { kind, key, factsDigest, computed: uncomputedItem(setting.plannedOn), fault };
  }
}

/** SHA-256 of all that the line follows from. */
function digestOf(facts: object): string {
  const text = JSON.stringify(facts, (_, value: unknown) =>
    ArrayBuffer.isView(value) ? [...(value as Float64Array)] : value,
  );
  return createHash('sha256').update(text).digest('hex');
}

/** On Linux a priority is a thread's own; elsewhere it would be that of the whole service. */
function giveWay(): void {
  if (process.platform === 'linux') setPriority(0, 10);
}
