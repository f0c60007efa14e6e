import { parentPort, workerData } from 'node:worker_threads';
import type { PlanMessage, PlanTask } from './plan-task.interface.js';

const task = workerData as PlanTask;
const say = (message: PlanMessage) => parentPort?.postMessage(message);

async function make(): Promise<void> {
  say({ kind: 'progress', done: 0, items: 0 });
  throw new Error(`There is nothing to make the plan ${task.plan.id} of.`);
}

void make();
